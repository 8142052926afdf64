### ما يقرؤه المريض ويسمعه عن كل حركة في الوقوف أو على الركبتين. الجانب والعدد ومدة الثبات يقولها البرنامج، فلا تُذكر هنا.
### خمس رسائل لكل حركة: اسمها، والاستعداد، وطريقتها، وما تشعر به، وما يجب الانتباه إليه.

movement-calf-raise-name = الوقوف على أصابع القدمين
movement-calf-raise-set-up = قف وجسمك مستقيم، وقدماك تحت وركيك. أمسك بكلتا يديك بدرابزين أو سطح ثابت.
movement-calf-raise-how = ارتفع على أصابع قدميك معا. اثبت. أنزل كعبيك ببطء.
movement-calf-raise-feel = تشعر بعمل العضلات خلف ساقيك.
movement-calf-raise-faults = أبق وزنك فوق إصبعي القدمين الكبيرين. دع القدمين تتقاسمان العمل.

movement-calf-raise-one-leg-name = الوقوف على أصابع قدم واحدة
movement-calf-raise-one-leg-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ارفع قدمك الأخرى عن الأرض.
movement-calf-raise-one-leg-how = ارتفع على أصابع قدمك. اثبت. أنزل كعبك ببطء. أبق قدمك الأخرى مرفوعة عن الأرض.
movement-calf-raise-one-leg-feel = تشعر بعمل العضلات خلف ساقك.
movement-calf-raise-one-leg-faults = أبق وزنك فوق إصبع قدمك الكبير. أبق ركبتك مستقيمة.

movement-hands-and-knees-arch-name = إنزال الظهر ثم رفعه
movement-hands-and-knees-arch-set-up = ضع منشفة مطوية على الأرض. انزل عليها على ركبتيك واستند على يديك. ضع يديك تحت كتفيك، وركبتيك تحت وركيك.
movement-hands-and-knees-arch-how = دع بطنك ينزل ببطء، فيصبح ظهرك مقعرا. ثم ارفع ظهرك مستديرا نحو السقف. تنفس وأنت تتحرك.
movement-hands-and-knees-arch-feel = تشعر بشد خفيف في بطنك، ثم على طول ظهرك.
movement-hands-and-knees-arch-faults = أبق وركيك فوق ركبتيك تماما. أبق ذراعيك ممدودتين.

movement-hip-hinge-name = الانحناء من الوركين
movement-hip-hinge-set-up = قف وجسمك مستقيم، وقدماك تحت وركيك. أمسك بكلتا يديك بدرابزين أو سطح ثابت.
movement-hip-hinge-how = اثن ركبتيك قليلا. ادفع حوضك إلى الخلف وانحن إلى الأمام. أبق ظهرك مستقيما. ادفع حوضك إلى الأمام وقف مستقيما.
movement-hip-hinge-feel = تشعر بعمل ردفيك. وتشعر بشد خفيف خلف فخذيك.
movement-hip-hinge-faults = أبق ظهرك مستقيما من رأسك إلى وركيك.

movement-hip-hinge-shallow-name = انحناء صغير من الوركين
movement-hip-hinge-shallow-set-up = قف وجسمك مستقيم، وقدماك تحت وركيك. أمسك بكلتا يديك بدرابزين أو سطح ثابت.
movement-hip-hinge-shallow-how = اثن ركبتيك قليلا. ادفع حوضك إلى الخلف وانحن إلى الأمام قليلا فقط. أبق ظهرك مستقيما. ادفع حوضك إلى الأمام وقف مستقيما.
movement-hip-hinge-shallow-feel = تشعر بعمل قليل في ردفيك وأسفل ظهرك.
movement-hip-hinge-shallow-faults = أبق الانحناء صغيرا. أبق ظهرك مستقيما من رأسك إلى وركيك.

movement-hip-hinge-stick-name = الانحناء مع عصا خلفك
movement-hip-hinge-stick-set-up = قف وجسمك مستقيم، وبقربك درابزين أو سطح ثابت. أمسك العصا على طول ظهرك، يدك خلف خصرك والأخرى خلف رقبتك. دع العصا تلامس رأسك وأعلى ظهرك وعصعصك.
movement-hip-hinge-stick-how = اثن ركبتيك قليلا. ادفع حوضك إلى الخلف وانحن إلى الأمام. أبق العصا على رأسك وأعلى ظهرك وعصعصك. ادفع حوضك إلى الأمام وقف مستقيما.
movement-hip-hinge-stick-feel = تشعر بعمل ردفيك وظهرك. وتشعر بشد خفيف خلف فخذيك.
movement-hip-hinge-stick-faults = أبق العصا ملامسة طوال الوقت. قلل الانحناء إذا ابتعدت.

movement-kneeling-weight-shift-name = الحوض إلى الخلف والأعلى، على الركبتين
movement-kneeling-weight-shift-set-up = ضع وسادة على الأرض. ضع كرسيا ثابتا أمامها. انزل على ركبتيك وأمسك بالكرسي.
movement-kneeling-weight-shift-how = حرك حوضك قليلا إلى الخلف، نحو كعبيك. ثم ارتفع حتى يستقيم جسمك على ركبتيك. أبق يديك على الكرسي.
movement-kneeling-weight-shift-feel = تشعر بشد خفيف في مقدمة ركبتيك. وتشعر بعمل فخذيك وردفيك وأنت ترتفع.
movement-kneeling-weight-shift-faults = أبق ظهرك مستقيما. أبق الوزن متساويا على الركبتين.

movement-marching-name = المشي في المكان
movement-marching-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-marching-how = ارفع ركبتك أمامك. دع ساقك تتدلى. أنزل قدمك ببطء.
movement-marching-feel = تشعر بعمل العضلات في مقدمة وركك. وتشعر بأن الرجل التي تقف عليها تثبتك.
movement-marching-faults = أبق جسمك مستقيما، فوق القدم التي تقف عليها تماما.

movement-marching-high-name = المشي في المكان برفع عال
movement-marching-high-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-marching-high-how = ارفع ركبتك أمامك، أعلى من وركك. دع ساقك تتدلى. أنزل قدمك ببطء.
movement-marching-high-feel = تشعر بعمل العضلات في مقدمة وركك وفخذك.
movement-marching-high-faults = أبق جسمك مستقيما، دون ميل إلى الخلف.

movement-marching-low-name = المشي في المكان برفع قليل
movement-marching-low-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-marching-low-how = ارفع ركبتك أمامك قليلا فقط. دع ساقك تتدلى. أنزل قدمك ببطء.
movement-marching-low-feel = تشعر بعمل قليل للعضلات في مقدمة وركك.
movement-marching-low-faults = أبق جسمك مستقيما، فوق القدم التي تقف عليها مباشرة.

movement-mini-squat-name = ثني صغير للركبتين، وقوفا
movement-mini-squat-set-up = قف وجسمك مستقيم، وقدماك تحت وركيك. أمسك بكلتا يديك بدرابزين أو سطح ثابت.
movement-mini-squat-how = اثن ركبتيك قليلا، كأنك تجلس. أبق كعبيك على الأرض. ارتفع حتى تقف مستقيما.
movement-mini-squat-feel = تشعر بعمل العضلات في مقدمة فخذيك.
movement-mini-squat-faults = أبق ركبتيك متجهتين مثل أصابع قدميك.

movement-mini-squat-deeper-name = ثني أعمق للركبتين، وقوفا
movement-mini-squat-deeper-set-up = قف وجسمك مستقيم، ووجهك إلى درابزين أو سطح ثابت. ضع قدميك تحت وركيك. أمسك به بكلتا يديك.
movement-mini-squat-deeper-how = ادفع حوضك إلى الخلف. اثن ركبتيك جيدا، كأنك تجلس. أبق كعبيك على الأرض. ارتفع حتى تقف مستقيما.
movement-mini-squat-deeper-feel = تشعر بعمل العضلات في مقدمة فخذيك وفي ردفيك.
movement-mini-squat-deeper-faults = أبق ركبتيك متجهتين مثل أصابع قدميك. أبق الوزن متساويا على القدمين.

movement-one-leg-stance-name = الوقوف على رجل واحدة
movement-one-leg-stance-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. أبقه في متناول يدك طوال الوقت.
movement-one-leg-stance-how = انقل وزنك فوق قدمك. ارفع قدمك الأخرى قليلا عن الأرض. قف بلا حركة. أمسك بخفة ما دام ذلك آمنا. ابق هكذا حتى ينتهي الوقت.
movement-one-leg-stance-feel = تشعر بحركات صغيرة في قدمك وكاحلك لتثبيتك. وتشعر بعمل جانب وركك.
movement-one-leg-stance-faults = أبق جسمك مستقيما وحوضك مستويا. أبق نظرك على شيء أمامك مباشرة.

movement-semi-tandem-stance-name = قدم متقدمة قليلا
movement-semi-tandem-stance-set-up = قف وجسمك مستقيم. أمسك بدرابزين أو سطح ثابت، وأبقه في متناول يدك. ضع قدميك متجاورتين، ثم قدّم قدمك بمقدار نصف طولها.
movement-semi-tandem-stance-how = قف بلا حركة. ضع الوزن متساويا على القدمين. أمسك بخفة ما دام ذلك آمنا. ابق هكذا حتى ينتهي الوقت.
movement-semi-tandem-stance-feel = تشعر بحركات صغيرة في قدميك وكاحليك لتثبيتك.
movement-semi-tandem-stance-faults = أبق جسمك مستقيما. أبق نظرك على شيء أمامك مباشرة.

movement-sit-to-stand-name = القيام عن الكرسي
movement-sit-to-stand-set-up = ضع كرسيا ثابتا وعاليا، وظهره إلى الجدار. اجلس قرب حافته الأمامية. ضع قدميك كاملتين على الأرض، إلى الخلف قليلا. ضع يديك على فخذيك.
movement-sit-to-stand-how = انحن قليلا إلى الأمام. ادفع بقدميك معا وانهض. قف وجسمك مستقيم. اثن ركبتيك واجلس ببطء.
movement-sit-to-stand-feel = تشعر بعمل العضلات في مقدمة فخذيك وفي ردفيك.
movement-sit-to-stand-faults = أبق الوزن متساويا على القدمين.

movement-sit-to-stand-arms-name = القيام عن الكرسي باليدين
movement-sit-to-stand-arms-set-up = ضع كرسيا ثابتا وعاليا له ذراعان، وظهره إلى الجدار. اجلس قرب حافته الأمامية. ضع قدميك كاملتين على الأرض، إلى الخلف قليلا. ضع يديك على ذراعي الكرسي.
movement-sit-to-stand-arms-how = انحن قليلا إلى الأمام. ادفع بيديك وبقدميك معا. قف وجسمك مستقيم. مد يديك خلفك إلى الكرسي واجلس ببطء.
movement-sit-to-stand-arms-feel = تشعر بعمل فخذيك وردفيك. وتشعر بأن ذراعيك تساعدان.
movement-sit-to-stand-arms-faults = أبق الوزن متساويا على القدمين.

movement-sit-to-stand-low-name = القيام عن كرسي أخفض
movement-sit-to-stand-low-set-up = ضع كرسيا أخفض وثابتا، وظهره إلى الجدار. اجلس قرب حافته الأمامية ويداك على فخذيك. ضع قدميك كاملتين على الأرض، إلى الخلف قليلا.
movement-sit-to-stand-low-how = انحن قليلا إلى الأمام. ادفع بقدميك معا وانهض. قف وجسمك مستقيم. اثن ركبتيك واجلس ببطء.
movement-sit-to-stand-low-feel = تشعر بعمل العضلات في مقدمة فخذيك وفي ردفيك.
movement-sit-to-stand-low-faults = أبق الوزن متساويا على القدمين. اجلس ببطء دائما.

movement-standing-abduction-name = رفع الرجل جانبا، وقوفا
movement-standing-abduction-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-abduction-how = ارفع رجلك إلى الجانب. أبق ركبتك مستقيمة. اثبت. أنزلها ببطء.
movement-standing-abduction-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك.
movement-standing-abduction-faults = أبق جسمك مستقيما. أبق أصابع قدمك متجهة إلى الأمام.

movement-standing-abduction-band-name = رفع الرجل جانبا بشريط، وقوفا
movement-standing-abduction-band-set-up = اجلس وضع الشريط حول كاحليك. قف وجسمك مستقيم، وأمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-abduction-band-how = ارفع رجلك إلى الجانب ضد الشريط. أبق ركبتك مستقيمة. اثبت. أنزلها ببطء.
movement-standing-abduction-band-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك.
movement-standing-abduction-band-faults = أبق جسمك مستقيما. أبق أصابع قدمك متجهة إلى الأمام.

movement-standing-adduction-name = الرجل أمام الأخرى، وقوفا
movement-standing-adduction-set-up = قف وجسمك مستقيم بجانب درابزين أو سطح ثابت. أمسك به بيدك الأخرى. ضع وزنك على الرجل الأخرى.
movement-standing-adduction-how = ارفع أصابع قدمك عن الأرض قليلا جدا. حرك رجلك أمام الأخرى إلى الجهة المقابلة. أبق ركبتك مستقيمة. اثبت. أرجع رجلك ببطء.
movement-standing-adduction-feel = تشعر بعمل العضلات في الجهة الداخلية من فخذك.
movement-standing-adduction-faults = أبق جسمك مستقيما وحوضك متجها إلى الأمام.

movement-standing-extension-name = رجلك إلى الخلف، وقوفا
movement-standing-extension-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-extension-how = حرك رجلك إلى الخلف مباشرة. أبق ركبتك مستقيمة. اثبت. أرجع رجلك تحتك ببطء.
movement-standing-extension-feel = تشعر بعمل ردفك.
movement-standing-extension-faults = أبق جسمك مستقيما وظهرك ثابتا.

movement-standing-extension-band-name = رجلك إلى الخلف بشريط، وقوفا
movement-standing-extension-band-set-up = اجلس وضع الشريط حول كاحليك. قف وجسمك مستقيم، وأمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-extension-band-how = حرك رجلك إلى الخلف مباشرة ضد الشريط. أبق ركبتك مستقيمة. اثبت. أرجع رجلك تحتك ببطء.
movement-standing-extension-band-feel = تشعر بعمل ردفك.
movement-standing-extension-band-faults = أبق جسمك مستقيما وظهرك ثابتا.

movement-standing-knee-curl-name = رفع الكعب إلى الخلف، وقوفا
movement-standing-knee-curl-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-knee-curl-how = اثن ركبتك وارفع كعبك خلفك. أبق فخذك متجها إلى الأسفل. اثبت. أنزل قدمك ببطء.
movement-standing-knee-curl-feel = تشعر بعمل العضلات خلف فخذك.
movement-standing-knee-curl-faults = أبق وركيك مستقيمين وركبتيك متجاورتين.

movement-standing-knee-curl-cuff-name = رفع الكعب إلى الخلف بثقل
movement-standing-knee-curl-cuff-set-up = اجلس وثبّت ثقل الكاحل فوق كاحلك مباشرة. قف وجسمك مستقيم، وأمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-knee-curl-cuff-how = اثن ركبتك وارفع كعبك خلفك. أبق فخذك متجها إلى الأسفل. اثبت. أنزل قدمك ببطء.
movement-standing-knee-curl-cuff-feel = تشعر بعمل العضلات خلف فخذك.
movement-standing-knee-curl-cuff-faults = أبق وركيك مستقيمين وركبتيك متجاورتين. أنزل ببطء كما ترفع ببطء.

movement-standing-straight-hip-flexion-name = الرجل المستقيمة إلى الأمام، وقوفا
movement-standing-straight-hip-flexion-set-up = قف وجسمك مستقيم. أمسك بكلتا يديك بدرابزين أو سطح ثابت. ضع وزنك على الرجل الأخرى.
movement-standing-straight-hip-flexion-how = ارفع رجلك مستقيمة أمامك. أبق ركبتك مستقيمة. اثبت. أنزلها ببطء.
movement-standing-straight-hip-flexion-feel = تشعر بعمل العضلات في مقدمة وركك وفخذك.
movement-standing-straight-hip-flexion-faults = أبق جسمك مستقيما، دون ميل إلى الخلف.

movement-step-up-name = صعود درجة
movement-step-up-set-up = قف ووجهك إلى درجة منخفضة وثابتة. أمسك بالدرابزين. ضع قدمك كلها على الدرجة.
movement-step-up-how = ادفع بالقدم التي على الدرجة. اصعد وقف وجسمك مستقيم. ارفع قدمك الأخرى إلى جانبها. انزل ببطء، بقدمك الأخرى أولا.
movement-step-up-feel = تشعر بعمل العضلات في مقدمة فخذك وفي ردفك، في الرجل التي على الدرجة.
movement-step-up-faults = دع العمل للرجل التي على الدرجة.

movement-step-up-high-name = صعود درجة أعلى
movement-step-up-high-set-up = قف ووجهك إلى درجة أعلى وثابتة. أمسك بالدرابزين. ضع قدمك كلها على الدرجة.
movement-step-up-high-how = ادفع بالقدم التي على الدرجة. اصعد وقف وجسمك مستقيم. ارفع قدمك الأخرى إلى جانبها. انزل ببطء، بقدمك الأخرى أولا.
movement-step-up-high-feel = تشعر بعمل العضلات في مقدمة فخذك وفي ردفك، في الرجل التي على الدرجة.
movement-step-up-high-faults = دع العمل للرجل التي على الدرجة. أبق ركبتك على خط أصابع قدمك.

movement-step-up-low-name = صعود درجة منخفضة
movement-step-up-low-set-up = قف ووجهك إلى أخفض درجة ثابتة عندك. أمسك بالدرابزين. ضع قدمك كلها على الدرجة.
movement-step-up-low-how = ادفع بالقدم التي على الدرجة. اصعد وقف وجسمك مستقيم. ارفع قدمك الأخرى إلى جانبها. انزل ببطء، بقدمك الأخرى أولا.
movement-step-up-low-feel = تشعر بعمل العضلات في مقدمة فخذك، في الرجل التي على الدرجة.
movement-step-up-low-faults = دع العمل للرجل التي على الدرجة.

movement-tandem-stance-name = قدم أمام الأخرى
movement-tandem-stance-set-up = قف وجسمك مستقيم بجانب درابزين أو سطح ثابت. أمسك به. ضع قدمك أمام الأخرى تماما، وكعبها عند أصابع الأخرى.
movement-tandem-stance-how = قف بلا حركة. ضع الوزن متساويا على القدمين. أمسك بخفة ما دام ذلك آمنا. ابق هكذا حتى ينتهي الوقت.
movement-tandem-stance-feel = تشعر بحركات صغيرة في قدميك وكاحليك لتثبيتك.
movement-tandem-stance-faults = أبق نظرك على شيء أمامك مباشرة.

movement-walking-name = المشي
movement-walking-set-up = البس حذاء ثابتا. خذ أداة المساعدة على المشي، إذا أُعطيت لك.
movement-walking-how = امش على أرض مستوية بسرعة مريحة. امش خطوات قصيرة ومتساوية. ضع كعبك أولا. ارجع قبل أن تتعب.
movement-walking-feel = تشعر بعمل رجليك، ويسرع تنفسك قليلا. ومع ذلك يمكنك الكلام وأنت تمشي.
movement-walking-faults = احتفظ بقوة تكفي لطريق العودة.
