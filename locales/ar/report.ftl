### تقرير المريض، في العيادة وعند إعداده.

hand-back-days = الأيام الكاملة: { $whole } من { $due } كان فيها شيء مطلوب.
hand-back-files = حُفظت الملفات في ⁨{ $folder }⁩. الملف ⁨{ $sealed }⁩ لا تفتحه إلا عيادتك. الملف ⁨{ $pages }⁩ فيه الشيء نفسه على صفحتين. الملف ⁨{ $table }⁩ هو سجلك في جدول. الملف ⁨{ $fhir }⁩ لبرامج أخرى.
hand-back-words = { $n ->
    [0] ليس فيه شيء من كلماتك.
    [zero] ليس فيه شيء من كلماتك.
    [one] فيه من كلماتك مرة واحدة.
    [two] فيه من كلماتك مرتين.
    [few] فيه من كلماتك { $n } مرات.
    [many] فيه من كلماتك { $n } مرة.
   *[other] فيه من كلماتك { $n } مرة.
}
hand-back-only-clinic = لم يُرسل شيء. أعط عيادتك الملف المختوم في زيارتك. لا أحد في العيادة يراه قبل ذلك. إذا كان هناك شيء غير سليم الآن، فاتصل بها.

hand-back-day = يوم { $from }.
hand-back-span = من يوم { $from } إلى يوم { $through }.
hand-back-entries = { $n ->
    [zero] لا تسجيلات
    [one] تسجيل واحد
    [two] تسجيلان
    [few] { $n } تسجيلات
    [many] { $n } تسجيلا
   *[other] { $n } تسجيل
}
hand-back-exercise = ⁨{ $name }⁩: { $done } من { $of ->
    [zero] { $of } جولة
    [one] جولة واحدة
    [two] جولتين
    [few] { $of } جولات
    [many] { $of } جولة
   *[other] { $of } جولة
}
hand-back-exercise-part = ⁨{ $name }⁩: { $done } من { $of ->
    [zero] { $of } جولة
    [one] جولة واحدة
    [two] جولتين
    [few] { $of } جولات
    [many] { $of } جولة
   *[other] { $of } جولة
}، وجزء من جولة أخرى
hand-back-pain = الألم أثناء الراحة مؤخرا: غالبا { $median }، بين { $least } و{ $most }.
hand-back-pain-same = الألم أثناء الراحة مؤخرا: { $median } في كل مرة.
hand-back-test = اختبار، { $day }: { $result }
hand-back-choose = أين يُحفظ للعيادة

break-written = سُجل انقطاع من يوم { $from } حتى نهاية يوم { $through }. ما لم يُسمح به بعد لا يتاح أبكر بسببه.
break-ended = ينتهي الانقطاع اليوم. تمارينك مطلوبة من جديد. إذا كانت عيادتك قد طلبت الانقطاع، فاسألها أولا.

report-title-day = ⁨{ $called }⁩، { $from }
report-title = ⁨{ $called }⁩، من { $from } إلى { $through }
report-vouched-for = تم التحقق: التوقيع والسجل وكل رقم صحيح.
report-not-vouched-for = لا يوثق به كما هو:
report-figures-differ = الأرقام التي فيه لا تنتج من سجله. الأرقام أدناه حُسبت من جديد.
report-not-authentic = من أنشأه لم يكن لديه سر الخطة.
report-does-not-extend = لا يكمل تقريرا سابقا.
report-person-other = هو لشخص غير صاحب التقرير السابق.
report-older = هو أقدم من تقرير وصلكم من قبل.
report-clinic-not-compared = لم تُعط قائمة موقّعين: لم يُقارن هل خططه من عيادتكم.
report-device-new = لم يُعط تقرير سابق: يُعد هذا الجهاز جديدا.
report-words-withheld = احتفظ المريض بكلمات له ولم يرسلها.
report-ring-today = للاتصال اليوم:
report-talk-about = للحديث:
report-the-file = الملف:
report-last-days = الأيام الأخيرة: { $days }
report-days = الأيام المطلوبة: { $due }؛ كاملة { $whole }، جزئية { $part }، توقف كما طُلب { $told }، بلا تسجيل { $none }. دون انقطاعات المريض نفسه: { $bare-whole } من { $bare-due } كاملة.
report-dose = الجولات: { $done } من { $of } ({ $percent }%)؛ معدودة { $counted }، معدودة غير مؤكدة { $unconfirmed }، من الذاكرة { $remembered }؛ زيادة على ذلك { $beyond }.
report-pain = الألم أثناء الراحة في آخر أسبوع فيه إجابات: الوسيط { $median }، من { $least } إلى { $most }.
report-worst = أقل ما أُنجز هو ⁨{ $item }⁩: { $done } من { $of } من الجولات؛ { $left ->
    [0] ولم يُترك لسبب مذكور
    [zero] ولم يُترك لسبب مذكور
    [one] وتُرك مرة واحدة لسبب مذكور
    [two] وتُرك مرتين لسبب مذكور
    [few] وتُرك { $left } مرات لسبب مذكور
    [many] وتُرك { $left } مرة لسبب مذكور
   *[other] وتُرك { $left } مرة لسبب مذكور
}.
report-asks = يسأل المريض: ⁨{ $words }⁩
report-exercises = التمارين:
report-exercise = ⁨{ $item }⁩: { $done } من { $of } من الجولات (من الذاكرة { $remembered })، { $left ->
    [0] ولم يُترك
    [zero] ولم يُترك
    [one] وتُرك مرة واحدة
    [two] وتُرك مرتين
    [few] وتُرك { $left } مرات
    [many] وتُرك { $left } مرة
   *[other] وتُرك { $left } مرة
}
report-as-needed = ⁨{ $item }⁩: عدد الجولات عند الحاجة { $needed }
report-not-asked = ⁨{ $item }⁩: عدد الجولات غير المطلوبة { $beyond }
report-tests = اختبارات البيت:
report-test = { $day }، ⁨{ $test }⁩: { $said }
report-chair-stand = النهوض عن الكرسي في 30 ثانية: { $n }.
report-chair-stand-arms = النهوض عن الكرسي في 30 ثانية: { $n } بالذراعين، ونتيجته 0.
report-chair-stand-table = ⁨CDC STEADI⁩ عند عمر { $younger } أو { $older } سنة (تذكر الخطة سنة الميلاد، ولا تذكر هل هو رجل أم امرأة): الرجال، { $men }؛ النساء، { $women }.
report-timed-up-and-go = النهوض والمشي مع قياس الوقت: { $seconds } ث.
report-walk-risk = 12 ث أو أكثر: خطر السقوط (⁨CDC STEADI⁩).
report-walk-no-risk = أقل من 12 ث (⁨CDC STEADI⁩).
report-four-stage-balance = التوازن في أربع وضعيات: { $held }.
report-stance-side-by-side = القدمان متجاورتان { $seconds } ث
report-stance-semi-tandem = قدم متقدمة بمقدار نصفها { $seconds } ث
report-stance-tandem = كعب القدم عند أصابع الأخرى { $seconds } ث
report-stance-one-leg = رجل واحدة { $seconds } ث
report-tandem-risk = كعب القدم عند أصابع الأخرى أقل من 10 ث: خطر السقوط (⁨CDC STEADI⁩).
report-tandem-no-risk = كعب القدم عند أصابع الأخرى مدة 10 ث (⁨CDC STEADI⁩).
report-test-helper = مع مساعد.
report-test-alone = لم يكن أحد بجانب المريض.
report-test-timed = كما قيس.
report-test-by-hand = يدويا، أو بعد تصحيح.
report-test-against-gate = لم يكن مسموحا به في ذلك اليوم.
norm-below-average = دون المتوسط (أقل من { $below })
norm-not-below-average = ليس دون المتوسط ({ $below } أو أكثر)
norm-by-birthday = دون المتوسط أو لا، حسب يوم الميلاد (الحدود { $below })
norm-no-norm = لا معيار
report-caution = الأيام التي بلا تسجيل ليست منجزة ولا مرفوضة. الأرقام من جهاز المريض نفسه.
flag-warning-sign = { $day }: علامة تحذير كانت جديدة أو أسوأ
flag-pain-over-limit = { $day }: الألم { $level }، فوق حد الخطة
flag-fall = { $day }: سقوط
flag-readmission = { $day }: إقامة في المستشفى
flag-against-gate = { $day }: أُنجز ⁨{ $item }⁩ وهو غير مسموح به
flag-test-against-gate = { $day }: أُنجز اختبار البيت ⁨{ $test }⁩ وهو غير مسموح به
flag-rising-pain = { $day }: ارتفع الألم أثناء الراحة بمقدار { $change } من النقاط (لا يسمى تغيرا إلا فوق نقطتين)
flag-skipped = { $day }: تُرك ⁨{ $item }⁩ { $times ->
    [zero] { $times } مرة
    [one] مرة واحدة
    [two] مرتين
    [few] { $times } مرات
    [many] { $times } مرة
   *[other] { $times } مرة
} لسبب مذكور
flag-overdone = { $day }: أُنجز ⁨{ $item }⁩ أكثر من المطلوب في { $days ->
    [zero] { $days } يوم
    [one] يوم واحد
    [two] يومين
    [few] { $days } أيام
    [many] { $days } يوما
   *[other] { $days } يوم
}
flag-lift-ignored = { $day }: إلغاء لم يكن له أثر: «⁨{ $precaution }⁩»
flag-clock = { $day }: تغيرت الساعة فجأة (بالساعات: ⁨{ $hours }⁩)، وتم تأكيد التاريخ
flag-chain-broken = { $day }: السجل غير متسلسل ابتداء من الحدث { $seq }
mark-not-due = لا شيء مطلوب
mark-whole = كامل
mark-part = جزئي
mark-stopped-as-told = توقف كما طُلب
mark-no-record = بلا تسجيل

### التقرير على الورق.

report-page-title = تقرير ⁨{ $called }⁩
report-page-span = من { $from } إلى { $through }
report-page-day = { $day }
report-page-made = أُعد يوم { $day }. إصدار الخطة { $revision }.
report-page-foot = تقرير ⁨{ $called }⁩، { $day }
report-page-episode = ⁨{ $name }⁩، { $side }: الأسبوع { $week }، اليوم { $day }
report-page-episode-unknown = ⁨{ $name }⁩، { $side }: اليوم 0 غير معروف
report-page-weight = تحميل الوزن
report-page-gates = ليس بعد
report-page-gates-n = { $n ->
    [0] لا شيء من الخطة مؤجل.
    [zero] لا شيء من الخطة مؤجل.
    [one] تمرين واحد مؤجل.
    [two] تمرينان مؤجلان.
    [few] { $n } تمارين مؤجلة.
    [many] { $n } تمرينا مؤجلا.
   *[other] { $n } تمرين مؤجل.
}
report-page-next = التالي الذي يتاح: ⁨{ $name }⁩، { $day }.
report-page-next-none = ليس لأي منها يوم يتاح فيه.
report-page-review = كان يجب أن تُراجع الخطة قبل نهاية يوم { $day }. لا يتاح شيء جديد حتى تتم مراجعتها.
report-page-ring = للاتصال اليوم
report-page-earlier = أقدم، في السجل: { $n }
report-page-ring-none = لا شيء يحتاج إلى اتصال اليوم.
report-page-talk = للحديث
report-page-file = الملف
report-page-last = آخر سبعة أيام
report-page-worst = أقل ما أُنجز
report-page-worst-of = ⁨{ $item }⁩: { $part }. { $reasons }
report-page-worst-none = لم يُنجز شيء أقل من المطلوب.
report-page-left = تُرك: { $reasons }.
report-page-left-times = { $reason } ({ $n })
report-page-pain = الألم
report-page-pain-rest = أثناء الراحة، آخر أسبوع فيه إجابات: { $levels }
report-page-pain-morning = في الصباح التالي: { $levels }
report-page-pain-change = { $change ->
    [rose] أثناء الراحة ارتفع بمقدار { $points } من الأسبوع الأول إلى الأخير.
    [fell] أثناء الراحة انخفض بمقدار { $points } من الأسبوع الأول إلى الأخير.
   *[same] أثناء الراحة اختلف بمقدار { $points } من الأسبوع الأول إلى الأخير: نقطتان أو أقل لا تسمى تغيرا.
}
report-page-asks = سؤال المريض
report-page-asks-none = لم يُكتب سؤال.

report-page-weeks = أسبوعا بعد أسبوع
report-page-week = الأسبوع
report-page-weeks-from = من { $first } إلى { $last }
report-page-all = المدة كلها
report-page-bare = دون انقطاعاته
report-page-due = مطلوب
report-page-whole = كامل
report-page-part = جزئي
report-page-told = توقف كما طُلب
report-page-none = بلا تسجيل
report-page-dose = الجولات المنجزة
report-page-counted = معدودة
report-page-unconfirmed = غير مؤكدة
report-page-remembered = من الذاكرة
report-page-beyond = زيادة
report-page-needed = عند الحاجة
report-page-breaks = { $n ->
    [0] لم يُعلن عن أي انقطاع للمريض نفسه بعد بدايته.
    [zero] لم يُعلن عن أي انقطاع للمريض نفسه بعد بدايته.
    [one] يوم واحد من انقطاع للمريض نفسه أُعلن عنه بعد بدايته.
    [two] يومان من انقطاعات المريض نفسه أُعلن عنهما بعد بدايتها.
    [few] { $n } أيام من انقطاعات المريض نفسه أُعلن عنها بعد بدايتها.
    [many] { $n } يوما من انقطاعات المريض نفسه أُعلن عنها بعد بدايتها.
   *[other] { $n } يوم من انقطاعات المريض نفسه أُعلن عنها بعد بدايتها.
}
report-page-bar = الأشرطة: المعدود ممتلئ، وغير المؤكد رمادي، وما من الذاكرة مفرغ.

report-page-exercises = تمرينا بعد تمرين
report-page-exercise = التمرين
report-page-also = أيضا
report-page-easier = { $n ->
    [zero] الطريقة الأسهل { $n } مرة.
    [one] الطريقة الأسهل مرة واحدة.
    [two] الطريقة الأسهل مرتين.
    [few] الطريقة الأسهل { $n } مرات.
    [many] الطريقة الأسهل { $n } مرة.
   *[other] الطريقة الأسهل { $n } مرة.
}
report-page-against = { $n ->
    [zero] أُنجز في { $n } يوم وهو غير مسموح به.
    [one] أُنجز في يوم واحد وهو غير مسموح به.
    [two] أُنجز في يومين وهو غير مسموح به.
    [few] أُنجز في { $n } أيام وهو غير مسموح به.
    [many] أُنجز في { $n } يوما وهو غير مسموح به.
   *[other] أُنجز في { $n } يوم وهو غير مسموح به.
}

report-page-feeling = الألم والجهد
report-page-rest = أثناء الراحة، قبل
report-page-during = أثناء التمرين
report-page-after = بعد
report-page-morning = الصباح التالي
report-page-effort = الجهد
report-page-chart = الألم أثناء الراحة حسب الأسبوع، من 0 إلى 10: { $said }
report-page-chart-week = الأسبوع { $week }: { $levels }
report-page-chart-key = النقطة هي وسيط الأسبوع أثناء الراحة، والخط مداه. والعلامة × هي الوسيط أثناء الجلسة.
report-page-no-pain = لم يُجب أحد عن الألم.

report-page-words = بكلمات المريض
report-page-words-none = لم يُكتب شيء.
report-page-words-more = { $n ->
    [zero] { $n } تسجيل أقدم موجودة في السجل.
    [one] تسجيل واحد أقدم موجود في السجل.
    [two] تسجيلان أقدم موجودان في السجل.
    [few] { $n } تسجيلات أقدم موجودة في السجل.
    [many] { $n } تسجيلا أقدم موجودة في السجل.
   *[other] { $n } تسجيل أقدم موجودة في السجل.
}
report-page-words-withheld = { $n ->
    [zero] تسجيلات احتفظ بها المريض: { $n }.
    [one] احتفظ المريض بتسجيل واحد.
    [two] احتفظ المريض بتسجيلين.
    [few] تسجيلات احتفظ بها المريض: { $n }.
    [many] تسجيلات احتفظ بها المريض: { $n }.
   *[other] تسجيلات احتفظ بها المريض: { $n }.
}
report-page-checked = ما تم التحقق منه
report-page-not-checked = لم يتم التحقق بعد. برنامج العيادة يتحقق من الملف المختوم: التوقيع والسجل وكل رقم.
report-page-definitions = ماذا تعني الأرقام
report-page-def-due = المطلوب هو ما طلبته الخطة السارية في ذلك اليوم. غير المطلوب: الأيام قبل وصول الخطة، وما لم يُسمح به بعد، والانقطاعات التي أمرت بها العيادة، وأيام المستشفى.
report-page-def-days = اليوم كامل إذا أُنجز كل المطلوب. بلا تسجيل: ليس منجزا ولا مرفوضا.
report-page-def-dose = الجولات المنجزة إلى الجولات المطلوبة. يُحسب التمرين بقدر المطلوب على الأكثر، لئلا تخفي الزيادة في تمرين نقصا في آخر. وما زاد رقم مستقل.
report-page-def-how = معدودة: قادها العد وأجاب شخص. غير مؤكدة: لم يُجب أحد. من الذاكرة: سُجلت لاحقا. تميل اليوميات إلى ذكر أكثر مما أُنجز (⁨Nicolson 2018⁩).
report-page-def-pain = الوسيط، ثم من الأقل إلى الأكثر، من 0 إلى 10. لا يسمى الفرق تغيرا إلا فوق نقطتين (⁨Farrar 2001; Childs 2005⁩).
report-page-def-trend = ميل الألم أثناء الراحة حسب ⁨Theil⁩ و ⁨Sen⁩، مع فترته عند 95%.
report-page-trend = الميل بالنقاط في الأسبوع: ⁨{ $slope }⁩ (من ⁨{ $low }⁩ إلى ⁨{ $high }⁩؛ عدد الإجابات { $n })
report-page-trend-none = الإجابات أقل من أن يُحسب منها ميل.

report-part = { $done } من { $of } ({ $percent }%)
report-levels = { $median } (من { $least } إلى { $most })
report-left-chose = اختيار شخصي
report-left-hurt = ألم
report-left-tired = تعب
report-left-no-time = ضيق الوقت
report-left-unsure = عدم معرفة الطريقة
report-left-no-helper = عدم وجود مساعد
report-left-nothing-at-hand = نقص شيء لازم
