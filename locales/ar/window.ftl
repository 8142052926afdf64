### ما تقوله عدة شاشات في النافذة.

weeks-one = الأسبوع { $week }
weeks-this = الأسبوع { $week }، هذا الأسبوع
weeks-opens = ⁨{ $name }⁩: يتاح من يوم { $day }

past-sessions = { $n ->
    [0] لا جلسات بعد.
    [zero] لا جلسات بعد.
    [one] جلسة واحدة حتى الآن.
    [two] جلستان حتى الآن.
    [few] { $n } جلسات حتى الآن.
    [many] { $n } جلسة حتى الآن.
   *[other] { $n } جلسة حتى الآن.
}
past-week-from = من يوم { $day }
past-whole = جلسة كاملة.
past-part = جزء من جلسة.
past-remembered = { $n ->
    [zero] { $n } تمرين دون البرنامج، من الذاكرة.
    [one] تمرين واحد دون البرنامج، من الذاكرة.
    [two] تمرينان دون البرنامج، من الذاكرة.
    [few] { $n } تمارين دون البرنامج، من الذاكرة.
    [many] { $n } تمرينا دون البرنامج، من الذاكرة.
   *[other] { $n } تمرين دون البرنامج، من الذاكرة.
}
past-none = بلا تسجيل.
past-ahead = لم يأت بعد.
past-pain-before = قبل الجلسة، أثناء الراحة
past-pain-during = أثناء الجلسة
past-pain-after = بعد الجلسة
past-pain-next-morning = في الصباح التالي

position-supine = الاستلقاء على الظهر
position-hook-lying = الاستلقاء على الظهر مع ثني الركبتين
position-side-lying = الاستلقاء على الجنب؛ الجانب الذي تتمرن به في الأعلى
position-side-lying-under = الاستلقاء على الجنب؛ الجانب الذي تتمرن به في الأسفل
position-prone = الاستلقاء على البطن
position-seated = الجلوس
position-standing = الوقوف
position-bent-over = الوقوف مع الانحناء إلى الأمام والاستناد
position-kneeling = على الركبتين
position-hands-and-knees = على اليدين والركبتين
position-unknown = الوضعية غير معروفة

prop-chair = كرسي ثابت
prop-rail = شيء ثابت للإمساك به
prop-towel = منشفة
prop-roll = منشفة ملفوفة
prop-strap = حزام
prop-step = درجة سلم
prop-band = شريط التمرين المطاطي
prop-cuff = ثقل الكاحل
prop-pillow = وسادة
prop-stick = عصا
prop-walking-aid = أداة المساعدة على المشي
prop-table = طاولة
prop-wall = جدار أو إطار باب
prop-helper = شخص يساعدك

care-done-of = أُنجز اليوم { $done } من { $times }.
care-done = { $done ->
    [0] لم تُنجز أي مرة اليوم.
    [zero] لم تُنجز أي مرة اليوم.
    [one] أُنجزت مرة واحدة اليوم.
    [two] أُنجزت مرتان اليوم.
    [few] أُنجزت { $done } مرات اليوم.
    [many] أُنجزت { $done } مرة اليوم.
   *[other] أُنجزت { $done } مرة اليوم.
}

language-name = العربية
# القيمة ltr أو rtl: تُكتب العربية من اليمين إلى اليسار.
language-direction = rtl

window-no-screen = لا توجد هنا شاشة للعرض عليها.
window-pick-title = افتح الخطة من عيادتك
window-pick-kind = خطة Sendaluna
window-failed = حدث خطأ في هذه النافذة. ما سُجل محفوظ. الخطأ: ⁨{ $what }⁩
window-failed-do = أغلق Sendaluna وافتحه من جديد. إذا بقي الخطأ فاستعمل خطتك على الورق، أو اتصل بعيادتك.
problem-emergency = في حالة الطوارئ، اتصل برقم الطوارئ في بلدك. رقم عيادتك في رسالتها.
past-before-plan = قبل هذه الخطة.
