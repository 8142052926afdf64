### Today on one page, for somebody beside the patient who counts and ticks.

today-title = اليوم، من أجل ⁨{ $called }⁩
today-how = لمن يساعد: ابدأ من الأعلى إلى الأسفل. قل العدد بصوت مسموع. اشطب أحد الخطوط في كل مرة. وعند الانتهاء ضع علامة في المربع.
today-not-yet-how = لا تجرب هذه التمارين اليوم، ولا حتى برفق.
today-until-lifted = ⁨{ $names }⁩: إلى أن تسمح عيادتك
today-rests = متروك اليوم، لأنه كان مؤلما: ⁨{ $names }⁩
today-done = اكتمل اليوم: ⁨{ $names }⁩
today-left-out = لم يبق مكان للمزيد. ما تبقى موجود في Sendaluna.

today-signs = هل ظهر شيء من هذا أو ازداد سوءا؟ توقف إذن
today-hurts = إذا شعرت بألم فتوقف.
today-pain = الألم من 0 إلى 10. قبل التمرين: { $rest } أو أكثر، لا تبدأ واتصل اليوم. { $sharp ->
    [today] أثناءه: { $stop } أو أكثر، أو أعلى مما كان قبله بمقدار { $rise }، أوقف هذا التمرين. { $today } أو أكثر، أو ألم حاد: توقف لهذا اليوم واتصل.
   *[exercise] أثناءه: { $stop } أو أكثر، أو أعلى مما كان قبله بمقدار { $rise }، أو ألم حاد: أوقف هذا التمرين. { $today } أو أكثر: توقف لهذا اليوم واتصل.
}

today-pain-before = الألم قبل
today-pain-after = الألم بعد
today-words = بكلماتك
today-note = الألم: 0 لا ألم، 10 أسوأ ألم. الجهد: 0 { $least }، 10 { $most }. سجّل لاحقا في Sendaluna ما أُنجز.

today-choose = أين تُحفظ صفحة اليوم
today-written = اليوم في صفحة واحدة للطباعة: ⁨{ $path }⁩
