### استلام خطة.

receive-title = وصلت خطتك.
receive-for = إلى ⁨{ $called }⁩، سنة الميلاد { $born }. من ⁨{ $clinic }⁩.
receive-episode = ⁨{ $name }⁩: { $day }.
receive-exercises = { $n ->
    [zero] لا تمارين.
    [one] تمرين واحد.
    [two] تمرينان.
    [few] { $n } تمارين.
    [many] { $n } تمرينا.
   *[other] { $n } تمرين.
}
receive-not-yet = غير مسموح به بعد:
receive-which-side = أي جانب عولج؟ (⁨{ $name }⁩) أيسر أو أيمن أو كلاهما، أو «لا» إن لم يكن أيا منهما
receive-is-it-yours = هل كل هذا صحيح، وهل هذه خطتك؟ نعم أو لا
receive-done = هذه خطتك الآن. الإصدار { $revision }.
receive-same-again = هذه الخطة عندك من قبل. لم يتغير شيء. الإصدار { $revision }.
ask-date = اليوم هو { $day }. هل هذا صحيح؟ نعم أو لا

# في النافذة.
receive-file-title = افتح خطتك
receive-file-drop = اسحب ملف عيادتك إلى هنا، أو افتحه.
receive-file-where = قد يكون في بريد إلكتروني من عيادتك، أو على ذاكرة USB.
receive-open = فتح الملف
receive-open-another = فتح ملف آخر
receive-busy = لحظة من فضلك.
receive-code-title = الرمز في رسالتك
receive-code-how = انظر إلى رسالة موعدك. اكتب رمزها هنا.
receive-code-label = 12 حرفا ورقما
receive-code-missing = { $n ->
    [zero] ينقص { $n } حرف أو رقم. بعد ذلك تابع.
    [one] ينقص حرف أو رقم واحد. بعد ذلك تابع.
    [two] ينقص حرفان أو رقمان. بعد ذلك تابع.
    [few] تنقص { $n } حروف أو أرقام. بعد ذلك تابع.
    [many] ينقص { $n } حرفا أو رقما. بعد ذلك تابع.
   *[other] ينقص { $n } حرف أو رقم. بعد ذلك تابع.
}
receive-code-go-on = متابعة
receive-who = لمن هذه الخطة
receive-name = الاسم
receive-born = سنة الميلاد
receive-clinic = العيادة
receive-day-zero = يوم العملية: { $day }
receive-check = أجب أولا من فضلك
receive-check-why = يجب أن تقصد أنت وعيادتك الشيء نفسه. إذا شككت فانظر إلى رسالتك.
receive-side = ⁨{ $name }⁩: أي جانب عولج؟
receive-side-left = الأيسر
receive-side-right = الأيمن
receive-side-both = الجانبان
receive-side-neither = لا الأيسر ولا الأيمن
receive-side-needed = اختر أولا الجانب الذي عولج.
receive-date = اليوم هو { $day }. هل هذا صحيح؟
receive-date-yes = نعم، هذا صحيح
receive-date-no = لا، اليوم يوم آخر
receive-date-needed = قل أولا هل التاريخ صحيح.
receive-date-wrong = إذن تاريخ هذا الجهاز خاطئ. لم يُستلم شيء. صحح تاريخ الجهاز. ثم افتح الملف من جديد.
receive-mine = هذه خطتي
receive-not-mine = هذه ليست خطتي
receive-not-mine-do = لم يُستلم شيء. اتصل بالعيادة المذكورة في رسالتك وأخبرها.
receive-new-title = توجد خطة جديدة لك.
receive-new = هذا هو الإصدار { $revision } من خطتك. يحل محل الخطة التي عندك. ويبقى ما سجلته.
receive-take-in = استلام الخطة
receive-back-to-today = العودة إلى اليوم
receive-refused-title = لم يُستعمل هذا الملف.
receive-ring-letter = اتصل بعيادتك. الرقم مكتوب في رسالتك.
receive-code-first = أول أربع خانات من الرمز
receive-code-middle = الخانات الأربع الوسطى من الرمز
receive-code-last = آخر أربع خانات من الرمز
receive-what = ما في الخطة
receive-back = رجوع
receive-same-again-title = لا شيء جديد.
receive-open-again = فتح الملف من جديد
