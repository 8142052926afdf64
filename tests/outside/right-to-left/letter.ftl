### The letter in Arabic, to be set right to left. It moves into locales when Arabic ships.

date-day-and-year = { $day }/{ $month }/{ $year }
sheet-page = صفحة { $n } من { $of }
letter-title = خطة تمارينك
letter-for = إلى { $called }
letter-from = من ⁨{ $clinic }⁩، ⁨{ $phone }⁩
letter-date = { $day }
letter-what = تصلك الخطة في ملف. يفتحه برنامج Sendaluna على حاسوبك أو هاتفك. يعدّ معك، ويؤجّل ما لم يُسمح به بعد.
letter-steps = كيف تبدأ
letter-step-open = افتح Sendaluna، ودعه يفتح ملف الخطة.
letter-step-code = سيطلب منك رمز الرسالة. اكتب هذه الحروف والأرقام الاثني عشر:
letter-step-side = سيسألك أي جانب عولج. أجب بنفسك.
letter-step-check = انظر هل الاسم واليوم لك. إن لم يكونا لك فتوقف هنا واتصل بنا.
letter-code = رمز رسالتك
letter-code-why = يدلّ الرمز على أن الخطة منا. اكتبه من هذه الرسالة. لا تأخذه من رسالة هاتف أو مكالمة.
letter-code-forgives = لا فرق بين الحروف الكبيرة والصغيرة. لا يوجد حرف O ولا حرف I، بل هما الرقمان 0 و 1.
letter-pictures = خطتك في صور
letter-pictures-how = ليس لديك ملف الخطة؟ هذه الصور الـ { $n } تحمل خطتك. التقط لها صورًا واضحة، أو امسحها ضوئيًا، وافتحها كلها معًا في Sendaluna.
letter-pictures-no-code = رمز الرسالة ليس في الصور. تكتبه أنت.
letter-too-large = هذه الخطة أكبر من أن تُطبع في صور. استعمل ملف الخطة.
letter-picture = صورة { $n } من { $of }
letter-picture-alt = صورة { $n } من { $of } من الخطة، للكاميرا. الإصدار { $revision }.
letter-foot = رسالة إلى { $called }، الإصدار { $revision }
