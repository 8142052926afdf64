### ما يقرؤه المريض ويسمعه عن كل حركة في الجلوس. الجانب والعدد ومدة الثبات يقولها البرنامج، فلا تُذكر هنا.
### خمس رسائل لكل حركة: اسمها، والاستعداد، وطريقتها، وما تشعر به، وما يجب الانتباه إليه.

movement-calf-raise-seated-name = رفع الكعبين، جلوسا
movement-calf-raise-seated-set-up = اجلس على كرسي ثابت وظهرك مستقيم. ضع قدميك كاملتين على الأرض تحت ركبتيك.
movement-calf-raise-seated-how = ارفع كعبيك. أبق أصابع قدميك على الأرض. اثبت. أنزل كعبيك ببطء.
movement-calf-raise-seated-feel = تشعر بعمل العضلات خلف ساقيك.
movement-calf-raise-seated-faults = أبق وزنك فوق إصبعي القدمين الكبيرين. دع القدمين تتقاسمان العمل.

movement-long-arc-quad-name = مد الركبة، جلوسا
movement-long-arc-quad-set-up = اجلس إلى آخر مقعد كرسي ثابت. ضع قدميك كاملتين على الأرض.
movement-long-arc-quad-how = ارفع قدمك حتى تستقيم ركبتك. اثبت. أنزل قدمك ببطء إلى الأرض.
movement-long-arc-quad-feel = تشعر بعمل العضلات في مقدمة فخذك.
movement-long-arc-quad-faults = أبق ظهرك مستقيما على مسند الكرسي.

movement-long-arc-quad-band-name = مد الركبة بشريط، جلوسا
movement-long-arc-quad-band-set-up = اربط الشريط بالرجل الخلفية لكرسي ثابت. لفه حول كاحلك. اجلس إلى آخر المقعد، وقدماك كاملتان على الأرض.
movement-long-arc-quad-band-how = ارفع قدمك ضد الشريط حتى تستقيم ركبتك. اثبت. أنزل قدمك ببطء إلى الأرض.
movement-long-arc-quad-band-feel = تشعر بعمل العضلات في مقدمة فخذك ضد الشريط.
movement-long-arc-quad-band-faults = أبق ظهرك مستقيما على مسند الكرسي. أنزل ببطء كما ترفع ببطء.

movement-long-arc-quad-cuff-name = مد الركبة بثقل، جلوسا
movement-long-arc-quad-cuff-set-up = ثبّت الثقل فوق كاحلك مباشرة. اجلس إلى آخر مقعد كرسي ثابت. ضع قدميك كاملتين على الأرض.
movement-long-arc-quad-cuff-how = ارفع قدمك حتى تستقيم ركبتك. اثبت. أنزل قدمك ببطء إلى الأرض.
movement-long-arc-quad-cuff-feel = تشعر بعمل العضلات في مقدمة فخذك ضد الثقل.
movement-long-arc-quad-cuff-faults = أبق ظهرك مستقيما على مسند الكرسي. أنزل ببطء كما ترفع ببطء.

movement-long-arc-quad-partial-name = نصف مد الركبة، جلوسا
movement-long-arc-quad-partial-set-up = اجلس إلى آخر مقعد كرسي ثابت. ضع قدميك كاملتين على الأرض.
movement-long-arc-quad-partial-how = ارفع قدمك إلى نصف المسافة تقريبا. اثبت. أنزل قدمك ببطء إلى الأرض.
movement-long-arc-quad-partial-feel = تشعر بعمل قليل للعضلات في مقدمة فخذك.
movement-long-arc-quad-partial-faults = أبق ظهرك مستقيما على مسند الكرسي. أبق فخذك على المقعد.

movement-seated-arch-name = حني الظهر وتقويسه، جلوسا
movement-seated-arch-set-up = اجلس على كرسي ثابت، دون الاستناد إلى مسند الظهر. ضع قدميك كاملتين على الأرض تحت ركبتيك. ضع يديك على فخذيك.
movement-seated-arch-how = احن ظهرك ببطء وانظر إلى الأسفل. ثم اجلس وظهرك مستقيم. قوّس ظهرك قليلا إلى الخلف. توقف عندما تشعر بالشد.
movement-seated-arch-feel = تشعر بشد خفيف في ظهرك وأنت تحنيه. وتشعر بعمله قليلا وأنت تقوسه.
movement-seated-arch-faults = أبق ردفيك على المقعد. اجعل الحركة بطيئة وصغيرة.

movement-seated-heel-press-name = ضغط الكعب، جلوسا
movement-seated-heel-press-set-up = اجلس إلى آخر مقعد كرسي ثابت. ضع قدميك كاملتين على الأرض.
movement-seated-heel-press-how = اضغط كعبك على الأرض إلى الأسفل وإلى الخلف. أبق قدمك في مكانها. اثبت. أرخ ببطء.
movement-seated-heel-press-feel = تشعر بعمل العضلات خلف فخذك.
movement-seated-heel-press-faults = استمر في التنفس وأنت تضغط. أبق جسمك مستقيما.

movement-seated-knee-bend-name = سحب القدم إلى الخلف، جلوسا
movement-seated-knee-bend-set-up = اجلس على كرسي ثابت. ضع قدمك كاملة على الأرض، أمامك قليلا.
movement-seated-knee-bend-how = اسحب قدمك على الأرض إلى الخلف، تحت الكرسي. توقف عندما تشعر بالشد في ركبتك. اثبت. ادفع قدمك على الأرض إلى الأمام من جديد.
movement-seated-knee-bend-feel = تشعر بشد خفيف في مقدمة ركبتك وفخذك.
movement-seated-knee-bend-faults = أبق ردفيك على المقعد.

movement-seated-knee-bend-assisted-name = سحب القدم بمساعدة، جلوسا
movement-seated-knee-bend-assisted-set-up = اجلس على كرسي ثابت. ضع قدمك كاملة على الأرض، أمامك قليلا. ضع كاحلك الآخر أمامها متقاطعا معها.
movement-seated-knee-bend-assisted-how = اسحب قدمك على الأرض إلى الخلف، تحت الكرسي. ادفعها برفق بالقدم الأخرى. توقف عندما تشعر بالشد في ركبتك. اثبت. ادفع القدمين على الأرض إلى الأمام من جديد.
movement-seated-knee-bend-assisted-feel = تشعر بشد خفيف في مقدمة ركبتك وفخذك. رجلك الأخرى هي التي تدفع.
movement-seated-knee-bend-assisted-faults = أبق ردفيك على المقعد. ادفع برفق دائما.

movement-seated-knee-spread-name = إبعاد الركبة إلى الجانب، جلوسا
movement-seated-knee-spread-set-up = اجلس على كرسي ثابت وظهرك مستقيم. ضع قدميك كاملتين على الأرض تحت ركبتيك.
movement-seated-knee-spread-how = حرك ركبتك إلى الجانب. دع قدمك تنزلق معها إلى الخارج. أرجعهما معا، لكن ليس أبعد من الوسط.
movement-seated-knee-spread-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك.
movement-seated-knee-spread-faults = أبق جسمك مستقيما، والوزن متساويا على الردفين.

movement-seated-march-name = رفع الركبة كالمشي، جلوسا
movement-seated-march-set-up = اجلس على كرسي ثابت وظهرك مستقيم. ضع قدميك كاملتين على الأرض تحت ركبتيك.
movement-seated-march-how = ارفع ركبتك قليلا. أبق قدمك تحت ركبتك. أنزل قدمك ببطء إلى الأرض.
movement-seated-march-feel = تشعر بعمل العضلات في مقدمة وركك وفخذك.
movement-seated-march-faults = أبق جسمك مستقيما، دون ميل إلى الخلف.

movement-seated-march-cuff-name = رفع الركبة كالمشي بثقل، جلوسا
movement-seated-march-cuff-set-up = ثبّت الثقل فوق كاحلك مباشرة. اجلس على كرسي ثابت وظهرك مستقيم. ضع قدميك كاملتين على الأرض تحت ركبتيك.
movement-seated-march-cuff-how = ارفع ركبتك قليلا. أبق قدمك تحت ركبتك. أنزل قدمك ببطء إلى الأرض.
movement-seated-march-cuff-feel = تشعر بعمل العضلات في مقدمة وركك وفخذك ضد الثقل.
movement-seated-march-cuff-faults = أبق جسمك مستقيما، دون ميل إلى الخلف.

movement-seated-march-low-name = رفع الركبة كالمشي، على مقعد منخفض
movement-seated-march-low-set-up = اجلس على مقعد منخفض وثابت، وظهرك مستقيم. ضع قدميك كاملتين على الأرض تحت ركبتيك.
movement-seated-march-low-how = ارفع ركبتك قليلا. أبق قدمك تحت ركبتك. أنزل قدمك ببطء إلى الأرض.
movement-seated-march-low-feel = تشعر بعمل العضلات في مقدمة وركك وفخذك.
movement-seated-march-low-faults = أبق جسمك مستقيما، دون ميل إلى الخلف.
