### سطر الأوامر في العيادة.

clinic-passphrase = عبارة المرور:
clinic-passphrase-again = العبارة نفسها مرة أخرى:
clinic-written = كُتب: ⁨{ $path }⁩
clinic-lift-without-right = انتبه: ليست لدى ⁨{ $who }⁩ صلاحية إلغاء الاحتياطات. لن يكون لهذا الإلغاء أثر، وسيقرأ المريض ذلك.
clinic-lift-no-effect = بلا أثر: ليست لدى ⁨{ $by }⁩ صلاحية إلغاء الاحتياط ⁨{ $id }⁩. { $who ->
    [none] ولا يُعرف من وضعه.
   *[other] وهو من وضع ⁨{ $who }⁩.
}
clinic-unknown-family = انتبه: لا ينتمي أي تمرين في المكتبة إلى العائلة ⁨{ $id }⁩. هذا الاحتياط لا يمنع شيئا، إلا إذا كانت هذه العائلة لتمرين خاص بكم.
clinic-check-clean = تم الفحص: لا شيء في هذه الخطة يخالف احتياطا، في أي يوم.
clinic-check-contradictions = { $n ->
    [zero] { $n } تعارض. لا يمكن توقيع هذه الخطة.
    [one] تعارض واحد. لا يمكن توقيع هذه الخطة.
    [two] تعارضان. لا يمكن توقيع هذه الخطة.
    [few] { $n } تعارضات. لا يمكن توقيع هذه الخطة.
    [many] { $n } تعارضا. لا يمكن توقيع هذه الخطة.
   *[other] { $n } تعارض. لا يمكن توقيع هذه الخطة.
}
clinic-check-problems = { $n ->
    [zero] { $n } مشكلة. أصلحها أولا، ثم يُفحص كل يوم.
    [one] مشكلة واحدة. أصلحها أولا، ثم يُفحص كل يوم.
    [two] مشكلتان. أصلحهما أولا، ثم يُفحص كل يوم.
    [few] { $n } مشكلات. أصلحها أولا، ثم يُفحص كل يوم.
    [many] { $n } مشكلة. أصلحها أولا، ثم يُفحص كل يوم.
   *[other] { $n } مشكلة. أصلحها أولا، ثم يُفحص كل يوم.
}

contradiction = ⁨{ $item }⁩ (⁨{ $movement }⁩) مطلوب في المرحلة ⁨{ $stage }⁩ من يوم { $from } حتى نهاية يوم { $through }. { $reason }
contradiction-undated = ⁨{ $item }⁩ (⁨{ $movement }⁩) مطلوب في المرحلة ⁨{ $stage }⁩، واليوم 0 فيها غير معروف. { $reason }
contradiction-precaution = الاحتياط ⁨{ $precaution }⁩، من وضع ⁨{ $who }⁩: ⁨{ $why }⁩
near-limit = قريب من حد: ⁨{ $item }⁩ (⁨{ $movement }⁩)، الاحتياط ⁨{ $precaution }⁩. { $measured }
measured = { $side }: { $what } يبلغ ⁨{ $reaches }⁩؛ والمسموح به { $until }: ⁨{ $allowed }⁩.
measured-moment = عزم { $what }
measured-weight = الوزن
on-the-left = على اليسار
on-the-right = على اليمين
joint-motion = { $motion } في { $joint }
joint-hip = الورك
joint-knee = الركبة
joint-ankle = الكاحل
joint-shoulder = الكتف
joint-elbow = المرفق
joint-trunk = الجذع
motion-flexion = ثني
motion-extension = مد
motion-abduction = تبعيد
motion-adduction = تقريب
motion-internal-rotation = دوران داخلي
motion-external-rotation = دوران خارجي
motion-dorsiflexion = ثني ظهري
motion-plantarflexion = ثني أخمصي
motion-side-bending = ميل جانبي
motion-twisting = التواء

contradiction-would-pass = ما يصلح بدلا منه: ⁨{ $movements }⁩.
until-week = حتى نهاية الأسبوع { $n }
until-day = حتى نهاية يوم { $day }
until-lifted = حتى الإلغاء
numbers-of = ⁨{ $of }⁩ (⁨{ $movement }⁩؛ العائلة ⁨{ $family }⁩): { $position }
numbers-range = { $side }، { $what }: من ⁨{ $from }°⁩ إلى ⁨{ $to }°⁩، { $drive }
numbers-action = { $side }، عضلات { $what }: { $drive }
numbers-moment = { $side }، عزم { $what }: ⁨{ $moment } N·m/kg⁩، { $drive } (نصيب الجاذبية، تقديرا)
numbers-weight = الوزن، بالنسبة المئوية من وزن الجسم: اليسار { $left }، اليمين { $right }
numbers-bends-spine = يثني العمود الفقري
numbers-twists-spine = يلوي العمود الفقري
numbers-resistance = مقاومة خارجية
drive-active = حركة نشطة
drive-isometric = شد ثابت
drive-assisted = حركة بمساعدة
drive-passive = حركة سلبية
seat-low = المقعد أخفض من الركبة
seat-knee = المقعد بارتفاع الركبة
seat-high = المقعد أعلى من الركبة

show-plan = الخطة ⁨{ $plan }⁩، الإصدار { $revision }، إلى ⁨{ $called }⁩، من ⁨{ $clinic }⁩
show-days = المراجعة قبل نهاية يوم { $review }؛ آخر يوم: { $last }
show-letter-code = رمز الرسالة: ⁨{ $code }⁩
show-signers = قائمة الموقّعين { $number }:
show-precautions = الاحتياطات ({ $n }):
show-items = التمارين ({ $n }):
show-opens = يتاح من يوم { $day }
show-until-lifted = حتى الإلغاء
