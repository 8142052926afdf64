### أول دقيقتين.

first-leaf = صفحة { $n } من { $of }
first-language = لغتك
first-what-title = ما هذا البرنامج
first-what = يعرض لك Sendaluna تمارين خطة عيادتك: ما تفعله اليوم، وما يجب ألا تفعله بعد.
first-stays = ما تسجله يبقى على هذا الجهاز. لا يُرسل شيء.
first-always = علامات التحذير وأرقام الاتصال على بعد لمسة واحدة دائما.
first-reading = سهولة القراءة والسمع
first-go-on = متابعة
first-done = تم
first-later = لاحقا
first-back = رجوع
