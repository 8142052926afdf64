### التذكيرات: ما يقوله الإشعار، وكيف يُضبط، وما ضُغط.

reminder-title = Sendaluna
reminder-now = حان الوقت.
reminder-late = ما زال ذلك ممكنا الآن.
reminder-now-exercises = حان وقت تمارينك.
reminder-late-exercises = ما زال بإمكانك القيام بتمارينك الآن.
# بعد ثلاثة أيام بلا جواب، مرة في اليوم. يسأل ولا يلوم.
reminder-after-silence = لم نسمع منك منذ بضعة أيام. كيف حالك؟ ابدأ متى ناسبك ذلك. إذا لم يكن شيء ما على ما يرام، فاتصل بعيادتك.
reminder-start = البدء
reminder-in-30-minutes = بعد 30 دقيقة
reminder-not-today = ليس اليوم

not-today-done = سُجل: ليس اليوم، { $day }. تستمر التذكيرات غدا.
not-today-ask = قلت «ليس اليوم» يوم { $day }. ما السبب؟
not-today-once = نسأل عن هذا مرة واحدة. ترى عيادتك الجواب في تقريرك.
not-today-hurts = أشعر بألم
not-today-unwell = لست بخير
not-today-tired = أشعر بتعب شديد
not-today-no-time = لا وقت لدي
not-today-away = لست في البيت
not-today-not-said = لا أود أن أقول
not-today-thanks = شكرا. سُجل ذلك.

remind-off = التذكيرات: متوقفة
remind-at = التذكيرات: { $times }
remind-at-many = التذكيرات: { $n ->
    [zero] لا شيء في اليوم
    [one] مرة واحدة في اليوم
    [two] مرتان في اليوم
    [few] { $n } مرات في اليوم
    [many] { $n } مرة في اليوم
   *[other] { $n } مرة في اليوم
}
remind-none-today = التذكيرات: لا شيء اليوم
remind-by-plan = كما تطلب خطتك
remind-switch-on = أريد تذكيرا
remind-switch-off = لا أريد تذكيرا
remind-times = أوقات اليوم
remind-times-by-plan = هذه الأوقات من خطتك. يمكنك اختيار أوقاتك.
remind-times-own = هذه أوقاتك أنت. تطلب خطتك { $n ->
    [zero] { $n } مرة في اليوم على الأكثر
    [one] مرة واحدة في اليوم على الأكثر
    [two] مرتين في اليوم على الأكثر
    [few] { $n } مرات في اليوم على الأكثر
    [many] { $n } مرة في اليوم على الأكثر
   *[other] { $n } مرة في اليوم على الأكثر
}.
remind-times-of-plan = استعمال أوقات الخطة
remind-time-add = وقت إضافي
remind-time-take = حذف { $time }
remind-time-at = الساعة { $time }
remind-step = كل ضغطة 15 دقيقة.
remind-days-off = أيام بلا تذكير: { $days }
remind-days-off-none = أيام بلا تذكير: لا يوجد
remind-quiet = هدوء من { $from } إلى { $to }
remind-quiet-asleep = هدوء أثناء نومك
remind-quiet-own = ساعات هدوء أختارها أنا
remind-quiet-from = الهدوء من { $time }
remind-quiet-to = الهدوء حتى { $time }
remind-quiet-but = الوقت الذي اخترته بنفسك يأتي حتى في ساعات الهدوء.
remind-sound-on = إشعار مع صوت
remind-sound-off = إشعار بلا صوت
remind-shows-little = يقول الإشعار: «{ $now }» ولا يعرف أحد غيرك موضوعه.
remind-shows-exercises = يقول الإشعار: «{ $now }»
remind-shows-choose = ما يقوله الإشعار
remind-login-on = تبدأ التذكيرات عند تشغيل هذا الجهاز
remind-login-off = لا تبدأ التذكيرات عند تشغيل هذا الجهاز
remind-login-cannot = لا يسمح هذا الجهاز للبرنامج بأن يبدأ وحده.
remind-program-missing = برنامج التذكير ليس هنا. ثبّت Sendaluna من جديد. وحتى ذلك الحين، استعمل منبها.
remind-now = إرسال إشعار إلي الآن
remind-now-going = الإشعار في الطريق.
remind-now-taken = أُرسل الإشعار عن طريق ⁨{ $by }⁩. هل تراه؟ إن لم تره، فربما يحجز جهازك الإشعارات. ابحث فيه عن «عدم الإزعاج».
remind-now-held = يحجز ⁨{ $by }⁩ الإشعارات. ابحث فيه عن «عدم الإزعاج».
remind-now-closed = أخفى ⁨{ $by }⁩ الإشعار فورا. ربما لم تره.
remind-now-nobody = لا شيء في هذا الجهاز يستطيع عرض الإشعارات. استعمل منبها، أو ضع الأوقات في تقويمك.
remind-now-failed = تعذر عرض الإشعار: ⁨{ $what }⁩
remind-break = الانقطاع عن التمارين لأيام
remind-break-now = أنت في انقطاع من يوم { $from } حتى نهاية يوم { $through }.
remind-break-from = أول يوم: { $day }
remind-break-through = آخر يوم: { $day }
remind-break-why = لماذا؟
remind-break-own = أريد أن أتوقف بضعة أيام
remind-break-clinic = طلبته عيادتي
remind-break-hospital = أنا في المستشفى
remind-break-words = بكلماتك أنت. يمكنك ترك هذا فارغا.
remind-break-do = تسجيل الانقطاع
remind-break-end = العودة إلى التمارين من اليوم
remind-earlier-day = تقديم يوم
remind-later-day = تأخير يوم

calendar-save = وضع الأوقات في تقويمي
calendar-why = تحصل على ملف لتقويم هاتف أو لتقويم أسرتك. ليست فيه أي كلمة عن الصحة.
calendar-saved = ملف التقويم هنا: ⁨{ $path }⁩. افتحه على هاتفك. افتح ملفا جديدا عندما تتغير أوقاتك.
calendar-choose = أين يُحفظ ملف التقويم
calendar-summary = Sendaluna: حان الوقت
calendar-nothing = لا أوقات قادمة. لا يوجد ما يوضع في التقويم.
