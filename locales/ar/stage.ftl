### ما تعرضه الجلسة بخط كبير، وما تقوله.

stage-get-ready = استعد
stage-change-sides = بدّل الجانب
stage-count-in = تهيأ
stage-out = هيا
stage-hold = اثبت
stage-back = ارجع
stage-let-go = ارتخاء
stage-breathe-in = شهيق
stage-breathe-out = زفير
stage-keep-going = استمر
stage-walk = امش
stage-rest = استرح
stage-paused = متوقف
stage-done = انتهى
stage-of = من { $of }
stage-of-round = من { $of }، الجولة{"\u00A0"}{ $round }{"\u00A0"}من{"\u00A0"}{ $rounds }
stage-round = الجولة{"\u00A0"}{ $round }{"\u00A0"}من{"\u00A0"}{ $rounds }
stage-minutes = { $n ->
    [zero] الدقائق الباقية
    [one] الدقيقة الباقية
    [two] الدقيقتان الباقيتان
    [few] الدقائق الباقية
    [many] الدقائق الباقية
   *[other] الدقائق الباقية
}
stage-steps = عدد الخطوات
stage-minutes-left = { $n ->
    [0] بقي أقل من دقيقة
    [zero] بقي أقل من دقيقة
    [one] بقيت دقيقة واحدة
    [two] بقيت دقيقتان
    [few] بقيت { $n } دقائق
    [many] بقيت { $n } دقيقة
   *[other] بقيت { $n } دقيقة
}
stage-tally = أُنجز { $done } من { $of }.
stage-say-when-ready = خذ وضعية التمرين. ثم اضغط «{ session-ready }».
stage-say-when-beside = اطلب من أحد أن يقف بجانبك. ثم اضغط «{ session-beside-start }».
stage-walk-steps = { $n ->
    [zero] امش { $n } خطوة.
    [one] امش خطوة واحدة.
    [two] امش خطوتين.
    [few] امش { $n } خطوات.
    [many] امش { $n } خطوة.
   *[other] امش { $n } خطوة.
} ثم اضغط «{ session-walked }».
stage-lost-time = متوقف، لأن الجهاز كان في وضع السكون. تابع متى شئت.
ended-none = انتهت الجلسة. لم يُنجز شيء يمكن تسجيله. يمكنك أن تسجله بنفسك.

# ما يظهر على سطح المكتب عن البرنامج الذي يُبقي الشاشة مضاءة.
ears-why-awake = توجد جلسة جارية.
ears-no-speech = لا شيء في هذا الجهاز يستطيع الكلام. ستسمع نغمات وترى كلمات كبيرة.
ears-no-voice = لا يوجد في هذا الجهاز صوت بلغتك. ستسمع نغمات وترى كلمات كبيرة.
ears-no-tones = هذا الجهاز لا يصدر صوتا. سترى كلمات كبيرة.

tray-open = افتح ⁨Sendaluna⁩
tray-close = أغلق ⁨Sendaluna⁩
