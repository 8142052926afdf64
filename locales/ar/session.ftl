### الجلسة: أسئلة وإشارات وإجابات.

ask-signs = هل في هذه القائمة شيء جديد، أو أسوأ من المرة الماضية؟
# في هذا السؤال يجب أن تعني «لا» أنه لا شيء جديد ولا أسوأ.
ask-signs-again = مرة أخرى: هل يوجد شيء جديد، أو أسوأ من المرة الماضية؟
ask-signs-how = اكتب أرقام ما هو جديد أو أسوأ. اضغط Enter إن لم يوجد شيء.
ask-pain-now = ما شدة ألمك الآن، أثناء الراحة؟ من 0 (لا ألم) إلى 10 (أسوأ ألم يمكن تخيله)
ask-go-on = بدأت جلسة اليوم. هل تتابع من آخر جولة اكتملت؟ نعم أو لا
ask-pain-how-much = ما شدة الألم؟ من 0 (لا ألم) إلى 10 (أسوأ ألم يمكن تخيله)
ask-pain-kind = ما نوع الألم؟ 1 شد أو تعب في العضلات، 2 حاد أو كالطعنة
ask-pain-place = أين؟ 1 الورك، 2 الفخذ، 3 الركبة، 4 خلف الساق، 5 القدم، 6 الظهر، 7 الكتف، 8 مكان آخر
ask-how-many = كم أنجزت؟
ask-effort = كم بذلت من جهد؟ من 0 (مثل الراحة) إلى 10 (كل طاقتك). اضغط Enter للتخطي.
ask-pain-after = ما شدة ألمك الآن؟ من 0 (لا ألم) إلى 10 (أسوأ ألم يمكن تخيله). اضغط Enter للتخطي.
ask-words = هل تريد تسجيل شيء؟ اضغط Enter للتخطي.

signs-noted = سُجل. يمكنك المتابعة. أخبر عيادتك في زيارتك القادمة.
signs-emergency = اتصل برقم الطوارئ الآن إذا حدث أي شيء من هذا
signs-ring-today = لا تتمرن، واتصل بالعيادة اليوم، إذا حدث أي شيء من هذا
sign-unwell = لست بخير، أو تشعر بدوخة.
signs-note = أخبر العيادة في زيارتك القادمة إذا حدث أي شيء من هذا

stop-emergency = توقف. اتصل الآن بالرقم ⁨{ $emergency }⁩. قل إنك خضعت لعملية جراحية، وقل ما المشكلة.
stop-ring-today = توقف لهذا اليوم. اتصل الآن بعيادتك ⁨{ $clinic }⁩: ⁨{ $phone }⁩. المساء والليل وعطلة نهاية الأسبوع: ⁨{ $night }⁩.
stop-when-spoken = لا تبدأ أي جلسة حتى تتحدث مع العيادة. بعد ذلك اكتب: ⁨sendaluna spoke⁩

hurts-go-on = لا بأس. نتابع.
hurts-gently = تابع برفق. اجعل الحركة أصغر وأبطأ.
hurts-easier = استعمل الطريقة الأسهل.
hurts-stop-exercise = اترك هذا التمرين لهذا اليوم.
hurts-stop-today = توقف لهذا اليوم، واتصل بعيادتك.

session-keys = مفتاح المسافة: توقف مؤقت أو متابعة. ⁨h⁩: هذا مؤلم. ⁨f⁩: أنجزت أقل. ⁨e⁩: طريقة أسهل. ⁨l⁩: ترك هذا. ⁨Enter⁩: متابعة الآن. ⁨u⁩: لست بخير. ⁨q⁩: إنهاء.
session-paused = متوقف. خذ وقتك.

cue-if-it-hurts = إذا شعرت بألم فتوقف. وأخبرني بعد ذلك.
cue-hand-on-rail = ضع الهاتف جانبا. أمسك بالدرابزين.
cue-beside-you = ليكن شخص بجانبك في هذا التمرين.
cue-set-up = التالي: { $name }، { $side }.
cue-ready = اضغط مفتاح المسافة عندما تستعد.
cue-change-side = بدّل الجانب: { $side }.
cue-number = { $n }
cue-out = { $n }: هيا.
cue-hold = { $n ->
    [zero] اثبت { $n } ثانية.
    [one] اثبت ثانية واحدة.
    [two] اثبت ثانيتين.
    [few] اثبت { $n } ثوان.
    [many] اثبت { $n } ثانية.
   *[other] اثبت { $n } ثانية.
}
cue-back = وارجع.
cue-minutes-left = { $n ->
    [zero] بقي أقل من دقيقة.
    [one] بقيت دقيقة واحدة.
    [two] بقيت دقيقتان.
    [few] بقيت { $n } دقائق.
    [many] بقيت { $n } دقيقة.
   *[other] بقيت { $n } دقيقة.
}
cue-steps = { $n ->
    [zero] امش { $n } خطوة.
    [one] امش خطوة واحدة.
    [two] امش خطوتين.
    [few] امش { $n } خطوات.
    [many] امش { $n } خطوة.
   *[other] امش { $n } خطوة.
} اضغط مفتاح المسافة عندما تنتهي.
cue-set-done = أنجزت { $n }. تم التسجيل.
cue-rest = { $n ->
    [zero] استرح { $n } ثانية.
    [one] استرح ثانية واحدة.
    [two] استرح ثانيتين.
    [few] استرح { $n } ثوان.
    [many] استرح { $n } ثانية.
   *[other] استرح { $n } ثانية.
}
cue-going-on = نتابع. استعد.
cue-lost-time = متوقف، لأن الجهاز كان في وضع السكون. اضغط مفتاح المسافة للمتابعة.
cue-end = كان هذا آخر تمرين.

ended-whole = انتهت الجلسة كاملة.
ended-part = أنجزت جزءا من الجلسة. سُجل ما قمت به.
ended-stopped-as-told = توقفت كما طُلب منك. كان ذلك هو الصواب. سُجل ما قمت به.

## النافذة، قبل الجلسة.

before-back = رجوع
before-date = اليوم هو { $day }. هل هذا صحيح؟
before-date-yes = نعم، هذا صحيح
before-date-no = لا
before-date-wrong = تاريخ هذا الجهاز خاطئ.
before-date-why = تسير خطتك حسب التاريخ. لذلك لا تبدأ جلسة حتى يكون التاريخ صحيحا. لم تفقد شيئا.
before-date-do = صحح التاريخ في إعدادات هذا الجهاز. ثم ارجع وابدأ من جديد.
before-back-to-today = العودة إلى اليوم
before-tap = المس كل ما هو جديد أو أسوأ.
before-nothing = لا شيء جديد ولا أسوأ
before-something = نعم، يوجد شيء
before-go-on-with = متابعة بما اخترته
before-pain = ما شدة ألمك الآن، أثناء الراحة؟
before-pain-go-on = متابعة
before-coming = ما يأتي الآن
before-going-on = بدأت هذه الجلسة اليوم. تستمر من آخر جولة اكتملت.
before-minutes = { $n ->
    [zero] تستغرق أقل من دقيقة.
    [one] تستغرق نحو دقيقة واحدة.
    [two] تستغرق نحو دقيقتين.
    [few] تستغرق نحو { $n } دقائق.
    [many] تستغرق نحو { $n } دقيقة.
   *[other] تستغرق نحو { $n } دقيقة.
}
before-have-ready = جهز هذه الأشياء:
before-beside-you = ليكن شخص بجانبك في جزء من الجلسة.
before-helper = شخص يساعدني ويجيب عني
before-exercises = التمارين، بهذا الترتيب
before-begin = البدء

## النافذة، أثناء الجلسة.

session-none = لا ألم
session-worst = أسوأ ألم يمكن تخيله
session-back = رجوع
session-ready = يمكننا البدء
session-walked = مشيتها
session-beside-start = بجانبي شخص. البدء
session-beside-nobody = لا أحد هنا: ترك هذا
session-pause = توقف مؤقت
session-step-on = الحركة التالية
session-hurts = هذا مؤلم
session-fewer = أنجزت أقل
session-easier = طريقة أسهل
session-leave = ترك هذا
session-go-on = متابعة
session-go-on-without = متابعة دون هذا التمرين
session-go-on-now = متابعة الآن
session-stop = الإنهاء لهذا اليوم
session-unwell = لست بخير أو أشعر بدوخة
session-paused-phase = متوقف
session-take-your-time = خذ وقتك.
session-next = التالي
session-not-fewer = دون تغيير
session-saving = لحظة.

## النافذة: هذا مؤلم.

hurts-how-much = ما شدة الألم؟
hurts-still = توقفت. هذا هو الصواب. ابق بلا حركة قليلا.
hurts-seen = لا يمكنه قول رقم. ما أراه:
hurts-seen-none = لا ضيق
hurts-seen-some = بعض الضيق
hurts-seen-much = ضيق شديد
hurts-kind = ما نوع الألم؟
hurts-stretching = شد، أو تعب في العضلات
hurts-sharp = حاد، أو كالطعنة
hurts-where = أين الألم؟
hurts-places = مواضع في الجسم
hurts-hip = الورك
hurts-thigh = الفخذ
hurts-knee = الركبة
hurts-calf = خلف الساق
hurts-foot = القدم
hurts-back = الظهر
hurts-shoulder = الكتف
hurts-elsewhere = مكان آخر
hurts-cannot-say = لا أستطيع تحديد المكان
hurts-go-on-with = متابعة بهذا المكان

## النافذة: توقف.

stop-call-emergency = رقم الطوارئ
stop-call-clinic = اتصل بعيادتك ⁨{ $clinic }⁩
stop-call-night = المساء والليل وعطلة نهاية الأسبوع
stop-until-spoken = لا يبدأ أي تمرين حتى تتحدث مع العيادة.
stop-spoke = تحدثت مع العيادة
stop-spoke-sure = هل تحدثت حقا مع شخص في العيادة عن هذا؟
stop-spoke-yes = نعم، تحدثنا
stop-spoke-no = لا، ليس بعد

## النافذة، بعد الجلسة.

after-effort = كم بذلت من جهد؟
after-effort-least = مثل الراحة
after-effort-most = كل طاقتك
after-pain = ما شدة ألمك الآن؟
after-words = هل تريد تسجيل شيء؟
after-words-label = سطر واحد لزيارتك القادمة
after-skip = تخطي
after-go-on = متابعة
after-keep = حفظ
after-stopped = توقفت. كان ذلك هو الصواب.
after-nothing-asked = لا أسئلة أخرى الآن. ما قمت به محفوظ.
after-busy = يجري التسجيل. لحظة.
ended-tally = ما قمت به
ended-back = العودة إلى اليوم
