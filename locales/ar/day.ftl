### اليوم: ما هو مطلوب، وما ليس بعد، وأي قواعد تسري.

day-week = الأسبوع { $week } بعد: ⁨{ $name }⁩
day-week-unknown = يوم العملية غير معروف بعد: ⁨{ $name }⁩
day-zero-estimated = { $day }، تاريخ تقديري
day-zero-unknown = اليوم غير معروف بعد
day-now = الآن: { $exercises ->
    [zero] لا تمارين
    [one] تمرين واحد
    [two] تمرينان
    [few] { $exercises } تمارين
    [many] { $exercises } تمرينا
   *[other] { $exercises } تمرين
}، { $minutes ->
    [zero] { $minutes } دقيقة
    [one] دقيقة واحدة
    [two] دقيقتان
    [few] { $minutes } دقائق
    [many] { $minutes } دقيقة
   *[other] { $minutes } دقيقة
}.
day-nothing-now = لا شيء مطلوب الآن. الراحة الجيدة إنجاز أيضا.
day-can-go-on = بدأت جلسة اليوم. يمكنك المتابعة من آخر جولة اكتملت.
day-not-yet = ليس بعد
day-care = العناية بنفسك
day-rules = قواعد لكل يوم
day-lifts-ignored = احتياطات لم تتغير

times-today = { $times ->
    [zero] { $times } مرة اليوم
    [one] مرة واحدة اليوم
    [two] مرتان اليوم
    [few] { $times } مرات اليوم
    [many] { $times } مرة اليوم
   *[other] { $times } مرة اليوم
}، { $done ->
    [0] لم تُنجز أي مرة بعد
    [zero] لم تُنجز أي مرة بعد
    [one] أُنجزت مرة واحدة
    [two] أُنجزت مرتان
    [few] أُنجزت { $done } مرات
    [many] أُنجزت { $done } مرة
   *[other] أُنجزت { $done } مرة
}.
times-as-needed = عند الحاجة، { $most ->
    [zero] { $most } مرة في اليوم على الأكثر
    [one] مرة واحدة في اليوم على الأكثر
    [two] مرتان في اليوم على الأكثر
    [few] { $most } مرات في اليوم على الأكثر
    [many] { $most } مرة في اليوم على الأكثر
   *[other] { $most } مرة في اليوم على الأكثر
}. { $done ->
    [0] لم تُنجز أي مرة اليوم.
    [zero] لم تُنجز أي مرة اليوم.
    [one] أُنجزت مرة واحدة اليوم.
    [two] أُنجزت مرتان اليوم.
    [few] أُنجزت { $done } مرات اليوم.
    [many] أُنجزت { $done } مرة اليوم.
   *[other] أُنجزت { $done } مرة اليوم.
}
times-again-from = مرة أخرى ابتداء من الساعة { $time }.
times-rests-today = متروك اليوم، لأنه كان مؤلما.
times-not-today = غير مطلوب اليوم.

gate-open = هذا مسموح لك.
gate-open-from = ليس الآن. تطلبه خطتك من يوم { $day }.
gate-not-in-plan = ليس الآن. خطتك لا تطلبه.
not-yet-opens = ليس بعد. يتاح من يوم { $day }.
not-yet-opens-after-weeks = ليس بعد. يتاح من يوم { $day }، بعد { $weeks ->
    [zero] { $weeks } أسبوع
    [one] أسبوع واحد
    [two] أسبوعين
    [few] { $weeks } أسابيع
    [many] { $weeks } أسبوعا
   *[other] { $weeks } أسبوع
} من العملية.
not-yet-open-ended = ليس بعد. ويبقى كذلك حتى تسمح به عيادتك.

reason-precaution = ⁨{ $why }⁩ بتعليمات من ⁨{ $who }⁩.
set-by = بتعليمات من ⁨{ $who }⁩.
reason-through = حتى نهاية يوم { $day }.
reason-until-lifted = حتى تقول عيادتك غير ذلك.
reason-until-lifted-not-before = حتى تقول عيادتك غير ذلك، وليس قبل يوم { $day }.
reason-day-zero-unknown = يوم العملية غير معروف بعد.
reason-facts-differ = هذا ليس التمرين الذي راجعته عيادتك.
reason-movement-unknown = هذا الإصدار من Sendaluna لا يعرف هذا التمرين.
reason-movement-not-seen = هذا تمرين خاص بعيادتك. الشخص الذي يحدد احتياطاتك لم يطلع عليه بعد.
reason-tightened = في يوم { $day } طلبت منك عيادتك إيقاف هذا.
lift-ignored = لم يتغير: ⁨{ $why }⁩ ليست لدى ⁨{ $by }⁩ صلاحية إلغاء هذا الاحتياط. { $who ->
    [none] ولا يُعرف من وضعه.
   *[other] وهو بتعليمات من ⁨{ $who }⁩.
}

reason-past-review = مضى موعد مراجعة العيادة لخطتك. لا يتاح شيء جديد حتى تراجعها. اتصل بالعيادة.
reason-set-back = تعرضت لسقوط أو انتكاسة. لا يتاح شيء جديد حتى تسمح به عيادتك. اتصل بها.
notice-must-ring = إجاباتك الأخيرة تعني: اتصل بالعيادة. بعد أن تتحدث معها، أكد ذلك هنا.
notice-clock = تغيرت ساعة هذا الجهاز فجأة. ستُسأل عن التاريخ قبل الجلسة القادمة.
notice-restart = مرت بضعة أيام دون تمارين. الجلسة الأولى بعدها أصغر، كما كتبت عيادتك.
notice-steps-after-break = التمارين التي ارتفع مستواها تبدأ من جديد من مستوى البداية الذي حددته عيادتك.
notice-ring-first = مرت مدة طويلة دون تمارين. اتصل بعيادتك قبل أن تبدأ من جديد.
notice-plan-over = انقضى اليوم الأخير من هذه الخطة. اسأل عيادتك عما يأتي بعدها.

did-written = سُجل ليوم { $day }، من الذاكرة.
did-against-gate = هذا غير مسموح به بعد. لا تفعله مرة أخرى في الوقت الحالي. اتصل بعيادتك وأخبرها.
tighten-done = أُوقف هذا التمرين، كما طلبت منك عيادتك. لن يُعرض عليك.
tighten-ended = لم يعد هذا التمرين موقوفا. يُعرض عليك من جديد إذا سمحت قواعد عيادتك.
spoke-done = حسنا. سُجل أنك تحدثت مع العيادة.
settings-now = اللغة: ⁨{ $lang }⁩. ساعات الاستيقاظ: من { $from } إلى { $to }.

day-later-or-done = لاحقا، أو أُنجز أو تُرك اليوم
day-kind = على مهلك. الجلسة الأصغر تُحسب أيضا.
day-care-done = تم
day-all-weeks = يعرض كل أسابيع خطتك.
day-begin = البدء
day-go-on = متابعة
day-begin-anew = البدء من جديد
day-back = العودة إلى اليوم
day-elsewhere = المزيد
day-new-plan = ملف خطة جديد
day-print = طباعة صفحة اليوم

not-yet-caution = «ليس بعد» تعني: اسأل عيادتك. ولا تعني: حاول برفق.
not-yet-back = العودة إلى تمارين اليوم
not-yet-why = لماذا، ومن قرر ذلك
not-yet-did = قمت به رغم ذلك
not-yet-day-zero-unknown = ليس بعد. يوم العملية غير معروف بعد. عندما يُعرف، اطلب من عيادتك ملف خطة جديدا.
