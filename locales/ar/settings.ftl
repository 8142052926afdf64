### الإعدادات في جمل؛ والصفحة الخاصة بسجل لا يمكن استعماله.

settings-title = الإعدادات
settings-back = رجوع
settings-language = اللغة: ⁨{ $name }⁩
settings-text = النص: { $size ->
    [100] عادي
    [125] أكبر
    [150] أكبر بكثير
   *[200] الأكبر
}
settings-text-choose = حجم النص
settings-text-normal = عادي
settings-text-larger = أكبر
settings-text-large = أكبر بكثير
settings-text-largest = الأكبر
settings-sample = ارفع ركبتك. اثبت 5 ثوان.
settings-theme = الشاشة: { $theme ->
    [light] فاتحة
    [dark] داكنة
   *[system] مثل هذا الجهاز
}
settings-theme-choose = شاشة فاتحة أو داكنة
settings-theme-system = مثل هذا الجهاز
settings-theme-light = شاشة فاتحة
settings-theme-dark = شاشة داكنة
settings-awake = ساعات الاستيقاظ: من { $from } إلى { $to }
settings-awake-from = القيام من النوم: { $time }
settings-awake-to = الذهاب إلى النوم: { $time }
settings-earlier = تقديم
settings-later = تأخير
settings-step = كل ضغطة 30 دقيقة.
settings-data = بياناتك تبقى على هذا الجهاز. لا يُرسل شيء.

problem-try-again = إعادة المحاولة
