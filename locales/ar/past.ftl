### ما قام به المريض.

past-title = ما قمت به
past-legend-whole = جلسة كاملة
past-legend-part = جزء من جلسة
past-from-memory = خط مفرغ: من الذاكرة
past-no-record = يوم بلا تسجيل
past-gap = بعض الأيام بلا تسجيل. لا بأس. تابع من اليوم.
past-press = اضغط على أسبوع لتقرأه بالكلمات.
past-pain = الألم
past-no-pain = لم يُسجل أي ألم بعد.
past-pain-chart = ألمك من يوم { $first } إلى يوم { $last }، في خط. والجدول يقول الشيء نفسه.
past-pain-table = الألم في جدول
past-effort = مقدار الجهد
past-effort-chart = مقدار الجهد في جلساتك من يوم { $first } إلى يوم { $last }، في خط. والجدول يقول الشيء نفسه.
past-effort-table = مقدار الجهد في جدول
past-clinic-sees = ما ستراه عيادتي
past-day = اليوم
past-level = من 0 إلى 10
