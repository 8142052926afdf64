### كيف تُسمع الجلسة: الصوت الذي ينطق العد، ونغماته.

hearing-voice = الصوت: { $how ->
    [off] متوقف
    [very-slow] يعمل، بطيء جدا
    [slow] يعمل، بطيء
    [little-slow] يعمل، بطيء قليلا
    [fast] يعمل، سريع قليلا
   *[normal] يعمل، عادي
}
hearing-aloud = نطق العد بصوت مسموع
hearing-yes = نعم
hearing-no = لا
hearing-rate = سرعة الصوت
hearing-rate-very-slow = بطيء جدا
hearing-rate-slow = بطيء
hearing-rate-little-slow = بطيء قليلا
hearing-rate-normal = عادي
hearing-rate-fast = سريع قليلا
hearing-pitch = طبقة الصوت: { $how ->
    [lower] أخفض
    [higher] أعلى
   *[normal] عادية
}
hearing-pitch-choose = طبقة الصوت
hearing-pitch-lower = أخفض
hearing-pitch-normal = عادية
hearing-pitch-higher = أعلى
hearing-tones = النغمات: { $tones ->
    [on] تعمل
   *[off] متوقفة
}
hearing-tones-choose = نغمات مع العد
hearing-try = أريد أن أسمع
hearing-trying = استمع الآن.
hearing-heard = هل سمعت ذلك؟ إن لم تسمع، فارفع صوت هذا الجهاز.
hearing-pace = العد: { $pace ->
    [slower] أبطأ
    [slowest] الأبطأ
    [by-hand] باليد
   *[prescribed] كما في الخطة
}
hearing-pace-choose = سرعة العد
hearing-pace-prescribed = كما في الخطة
hearing-pace-slower = أبطأ
hearing-pace-slowest = الأبطأ
hearing-pace-by-hand = باليد: كل حركة تنتظرني
hearing-pace-hold = عندها تطول مدة الثبات أيضا.
