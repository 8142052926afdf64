### ما يقرؤه المريض ويسمعه عن كل حركة في الاستلقاء. الجانب والعدد ومدة الثبات يقولها البرنامج، فلا تُذكر هنا.
### خمس رسائل لكل حركة: اسمها، والاستعداد، وطريقتها، وما تشعر به، وما يجب الانتباه إليه.

movement-abdominal-brace-name = شد البطن
movement-abdominal-brace-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير. ضع يديك على أسفل بطنك.
movement-abdominal-brace-how = شد أسفل بطنك برفق. أبق ظهرك ثابتا. اثبت واستمر في التنفس. أرخ ببطء.
movement-abdominal-brace-feel = تشعر بأن أسفل بطنك يتصلب تحت يديك.
movement-abdominal-brace-faults = استمر في التنفس كعادتك. شد برفق دائما.

movement-abdominal-brace-marching-name = شد البطن مع رفع القدم
movement-abdominal-brace-marching-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير. ضع يديك على أسفل بطنك.
movement-abdominal-brace-marching-how = شد أسفل بطنك برفق. أبقه مشدودا واستمر في التنفس. ارفع قدما واحدة قليلا عن السرير. أنزلها ببطء. أرخ بطنك.
movement-abdominal-brace-marching-feel = تشعر بأن أسفل بطنك يبقى مشدودا. وتشعر بعمل قليل في مقدمة وركك.
movement-abdominal-brace-marching-faults = أبق ظهرك وحوضك ثابتين بينما تتحرك قدمك.

movement-abduction-slide-name = تحريك الرجل إلى الجانب
movement-abduction-slide-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان. وجّه أصابع قدمك نحو السقف.
movement-abduction-slide-how = اسحب رجلك إلى الجانب. أبق كعبك على السرير. توقف عندما تشعر بالشد. أرجعها، لكن ليس أبعد من الوسط.
movement-abduction-slide-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك. وتشعر بشد خفيف في الجهة الداخلية من فخذك.
movement-abduction-slide-faults = أبق أصابع قدمك متجهة نحو السقف.

movement-ankle-pump-name = القدم إلى أعلى وأسفل
movement-ankle-pump-set-up = استلق على ظهرك. دع رجلك ممدودة ومرتاحة على السرير.
movement-ankle-pump-how = وجّه أصابع قدمك بعيدا عنك. ثم اسحب أصابع قدمك نحو مقدمة ساقك. أبق رجلك مرتاحة على السرير.
movement-ankle-pump-feel = تشعر بعمل العضلات خلف ساقك، ثم في مقدمتها.
movement-ankle-pump-faults = تحرك ببطء. أكمل الحركة إلى آخرها كل مرة.

movement-ankle-pump-band-name = دفع الشريط بالقدم
movement-ankle-pump-band-set-up = استلق على ظهرك ورجلك ممدودة. لف الشريط حول مقدمة باطن قدمك. أمسك طرفا بكل يد.
movement-ankle-pump-band-how = ادفع قدمك بعيدا عنك ضد الشريط. دع الشريط يرجع قدمك ببطء. أبق رجلك مرتاحة على السرير.
movement-ankle-pump-band-feel = تشعر بعمل العضلات خلف ساقك.
movement-ankle-pump-band-faults = ارجع ببطء كما تدفع ببطء.

movement-bridge-name = رفع الحوض
movement-bridge-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير.
movement-bridge-how = شد ردفيك. ادفع بقدميك وارفع حوضك. توقف عندما يصبح كتفاك ووركاك وركبتاك على خط واحد. اثبت. أنزل حوضك ببطء.
movement-bridge-feel = تشعر بعمل ردفيك والعضلات خلف فخذيك.
movement-bridge-faults = أبق ظهرك مستقيما. دع ردفيك يقومان بالرفع.

movement-bridge-one-leg-name = رفع الحوض بقدم واحدة
movement-bridge-one-leg-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير. ارفع قدمك الأخرى قليلا، والركبة مثنية.
movement-bridge-one-leg-how = شد ردفيك. ادفع بالقدم التي على السرير. ارفع حوضك حتى يستقيم جسمك. اثبت. أنزل حوضك ببطء.
movement-bridge-one-leg-feel = تشعر بعمل ردفك، والعضلات خلف الفخذ الذي يدفع.
movement-bridge-one-leg-faults = أبق حوضك مستويا. دع ردفك يقوم بالرفع.

movement-clam-name = رفع الركبة، استلقاء على الجنب
movement-clam-set-up = استلق على جنبك. الرجل التي تتمرن بها في الأعلى. اثن وركيك وركبتيك. ضع قدميك على خط ظهرك، إحداهما فوق الأخرى. ضع وسادة بين ركبتيك.
movement-clam-how = أبق قدميك معا. ارفع ركبتك العليا. اثبت. أنزلها ببطء إلى الوسادة.
movement-clam-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك العلوي وفي ردفك.
movement-clam-faults = أبق وركيك ثابتين، أحدهما فوق الآخر.

movement-clam-band-name = رفع الركبة بشريط، استلقاء
movement-clam-band-set-up = ضع الشريط حول فخذيك، فوق ركبتيك مباشرة. استلق على جنبك. الرجل التي تتمرن بها في الأعلى. اثن وركيك وركبتيك. ضع وسادة بين ركبتيك.
movement-clam-band-how = أبق قدميك معا، على خط ظهرك. ارفع ركبتك العليا ضد الشريط. اثبت. أنزلها ببطء إلى الوسادة.
movement-clam-band-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك العلوي وفي ردفك.
movement-clam-band-faults = أبق وركيك ثابتين، أحدهما فوق الآخر. أنزل ببطء دائما.

movement-double-knee-to-chest-name = الركبتان إلى الصدر
movement-double-knee-to-chest-set-up = استلق على ظهرك على سطح مستو. اثن ركبتيك وضع باطن قدميك على السرير.
movement-double-knee-to-chest-how = أمسك أحد فخذيك من الخلف وارفع ركبته. ثم ارفع الركبة الأخرى بالطريقة نفسها. اسحب ركبتيك برفق نحو صدرك. توقف عندما تشعر بالشد. اثبت. أنزل قدما إلى السرير، ثم الأخرى.
movement-double-knee-to-chest-feel = تشعر بشد خفيف في ردفيك وأسفل ظهرك. ذراعاك هما اللتان تسحبان.
movement-double-knee-to-chest-faults = اسحب برفق دائما. أبق رأسك مرتاحا على السرير.

movement-glute-set-name = شد الردفين
movement-glute-set-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان.
movement-glute-set-how = شد ردفيك معا. اثبت على الشد. أبق رجليك ثابتتين. أرخ ببطء.
movement-glute-set-feel = تشعر بأن ردفيك يتصلبان.
movement-glute-set-faults = استمر في التنفس وأنت تشد.

movement-heel-prop-name = تمدد الركبة والكعب مرفوع
movement-heel-prop-set-up = استلق على ظهرك على سطح مستو. ضع كعبك على منشفة ملفوفة. أبق ما تحت ركبتك فارغا.
movement-heel-prop-how = أرخ رجلك. دع ركبتك تنزل نحو السرير. ابق هكذا حتى ينتهي الوقت.
movement-heel-prop-feel = تشعر بشد خفيف خلف ركبتك.
movement-heel-prop-faults = أبق صابونة ركبتك وأصابع قدمك متجهة نحو السقف.

movement-heel-slide-name = سحب الكعب
movement-heel-slide-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان. البس جوربا لينزلق كعبك بسهولة.
movement-heel-slide-how = اسحب كعبك على السرير نحو ردفك. دع ركبتك تنثني إلى الأعلى. توقف عندما تشعر بالشد. أرجع كعبك حتى تستقيم رجلك.
movement-heel-slide-feel = تشعر بشد خفيف في مقدمة ركبتك. وتشعر بعمل قليل خلف فخذك.
movement-heel-slide-faults = أبق ركبتك على خط واحد مع وركك وقدمك.

movement-heel-slide-strap-name = سحب الكعب بحزام
movement-heel-slide-strap-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان. ضع الحزام حول قدمك. أمسك طرفا بكل يد.
movement-heel-slide-strap-how = اسحب الحزام برفق. دع كعبك ينزلق نحو ردفك. توقف عندما تشعر بالشد. أرخ الحزام ببطء حتى تستقيم رجلك.
movement-heel-slide-strap-feel = تشعر بشد خفيف في مقدمة ركبتك. ذراعاك هما اللتان تسحبان.
movement-heel-slide-strap-faults = أبق ركبتك على خط واحد مع وركك وقدمك. اسحب برفق دائما.

movement-hip-abduction-press-name = ضغط الركبتين على حزام
movement-hip-abduction-press-set-up = اربط الحزام حول فخذيك، فوق ركبتيك مباشرة. استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير.
movement-hip-abduction-press-how = اضغط ركبتيك إلى الخارج على الحزام. الحزام يمنعهما من الحركة. اثبت. أرخ ببطء.
movement-hip-abduction-press-feel = تشعر بعمل العضلات في الجهة الخارجية من وركيك.
movement-hip-abduction-press-faults = استمر في التنفس وأنت تضغط. اضغط بالقوة نفسها على الجانبين.

movement-knee-rolls-name = الركبتان من جانب إلى جانب
movement-knee-rolls-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير. أبق ركبتيك معا.
movement-knee-rolls-how = دع ركبتيك تميلان ببطء إلى جانب. توقف عندما تشعر بالشد. أرجعهما إلى الوسط. ثم أملهما إلى الجانب الآخر.
movement-knee-rolls-feel = تشعر بشد خفيف في أسفل ظهرك وجانب وركك.
movement-knee-rolls-faults = أبق كتفيك على السرير.

movement-passive-straight-leg-raise-name = رفع الرجل المستقيمة بيد مساعد
movement-passive-straight-leg-raise-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان. يقف من يساعدك بجانب السرير. يضع يدا تحت كعبك ويدا تحت ركبتك.
movement-passive-straight-leg-raise-how = دع رجلك مرتخية وثقيلة. يرفعها من يساعدك ببطء، والركبة مستقيمة. قل «توقف» عندما تشعر بالشد. ثم ينزلها ببطء إلى السرير.
movement-passive-straight-leg-raise-feel = تشعر بشد خفيف خلف فخذك. رجلك لا تعمل شيئا.
movement-passive-straight-leg-raise-faults = أبق رجلك ثقيلة. دع من يساعدك يقوم بالرفع كله.

movement-pelvic-tilt-name = بسط الظهر
movement-pelvic-tilt-set-up = استلق على ظهرك. اثن ركبتيك وضع باطن قدميك على السرير.
movement-pelvic-tilt-how = شد أسفل بطنك. اضغط أسفل ظهرك على السرير. اثبت. أرخ ببطء.
movement-pelvic-tilt-feel = تشعر بعمل أسفل بطنك. وتشعر بأسفل ظهرك يضغط على السرير.
movement-pelvic-tilt-faults = استمر في التنفس أثناء الثبات.

movement-press-up-on-elbows-name = رفع الصدر على الساعدين
movement-press-up-on-elbows-set-up = استلق على بطنك على السرير. اثن مرفقيك وضع ساعديك منبسطين بجانب رأسك.
movement-press-up-on-elbows-how = ارفع صدرك واستند على ساعديك. ضع مرفقيك تحت كتفيك. أبق حوضك على السرير. أرخ ظهرك. أنزل صدرك ببطء.
movement-press-up-on-elbows-feel = تشعر بأن ذراعيك تحملانك. وتشعر بشد خفيف في بطنك وأسفل ظهرك.
movement-press-up-on-elbows-faults = أبق كتفيك منخفضين، بعيدين عن أذنيك.

movement-prone-knee-bend-name = ثني الركبة على البطن
movement-prone-knee-bend-set-up = استلق على بطنك على السرير، ورجلاك ممدودتان.
movement-prone-knee-bend-how = اثن ركبتك. قرّب كعبك من ردفك. توقف عندما تشعر بالشد. أنزل قدمك ببطء إلى السرير.
movement-prone-knee-bend-feel = تشعر بعمل العضلات خلف فخذك. وتشعر بشد خفيف في مقدمة فخذك.
movement-prone-knee-bend-faults = أبق حوضك على السرير. أبق ركبتيك متجاورتين.

movement-prone-press-up-name = رفع الصدر على البطن
movement-prone-press-up-set-up = استلق على بطنك على السرير. ضع راحتي يديك بجانب كتفيك.
movement-prone-press-up-how = ادفع بذراعيك وارفع صدرك. أبق حوضك على السرير. أرخ ظهرك. أنزل صدرك ببطء.
movement-prone-press-up-feel = تشعر بأن ذراعيك هما اللتان تعملان. وتشعر بشد خفيف في بطنك وأسفل ظهرك.
movement-prone-press-up-faults = أبق كتفيك منخفضين، بعيدين عن أذنيك.

movement-quad-set-name = شد الفخذ
movement-quad-set-set-up = استلق على ظهرك على سطح مستو. أبق رجلك ممدودة وأصابع قدمك نحو السقف.
movement-quad-set-how = شد مقدمة فخذك. اضغط خلف ركبتك على السرير. اثبت. أرخ ببطء.
movement-quad-set-feel = تشعر بعمل العضلات في مقدمة فخذك، فوق ركبتك مباشرة.
movement-quad-set-faults = استمر في التنفس أثناء الثبات.

movement-quad-set-towel-name = شد الفخذ فوق منشفة
movement-quad-set-towel-set-up = استلق على ظهرك على سطح مستو ورجلك ممدودة. ضع منشفة ملفوفة تحت ركبتك. وجّه أصابع قدمك نحو السقف.
movement-quad-set-towel-how = شد مقدمة فخذك. اضغط خلف ركبتك على المنشفة. اثبت. أرخ ببطء.
movement-quad-set-towel-feel = تشعر بعمل العضلات في مقدمة فخذك، فوق ركبتك مباشرة.
movement-quad-set-towel-faults = استمر في التنفس أثناء الثبات. أبق صابونة ركبتك متجهة نحو السقف.

movement-short-arc-quad-name = مد الركبة فوق لفة
movement-short-arc-quad-set-up = استلق على ظهرك على سطح مستو. ضع المنشفة الملفوفة تحت ركبتك. دع كعبك مستندا على السرير.
movement-short-arc-quad-how = ارفع كعبك حتى تستقيم ركبتك. اثبت. أنزل كعبك ببطء إلى السرير.
movement-short-arc-quad-feel = تشعر بعمل العضلات في مقدمة فخذك، فوق ركبتك مباشرة.
movement-short-arc-quad-faults = أبق خلف فخذك على المنشفة الملفوفة.

movement-short-arc-quad-cuff-name = مد الركبة فوق لفة، بثقل
movement-short-arc-quad-cuff-set-up = ثبّت الثقل فوق كاحلك مباشرة. استلق على ظهرك على سطح مستو، والمنشفة الملفوفة تحت ركبتك. دع كعبك مستندا على السرير.
movement-short-arc-quad-cuff-how = ارفع كعبك حتى تستقيم ركبتك. اثبت. أنزل كعبك ببطء إلى السرير.
movement-short-arc-quad-cuff-feel = تشعر بعمل العضلات في مقدمة فخذك ضد الثقل، فوق ركبتك مباشرة.
movement-short-arc-quad-cuff-faults = أبق خلف فخذك على المنشفة الملفوفة. أنزل ببطء دائما.

movement-side-lying-abduction-name = رفع الرجل جانبا، استلقاء
movement-side-lying-abduction-set-up = استلق على جنبك. الرجل التي تتمرن بها في الأعلى. اثن رجلك السفلى قليلا. ضع وسادة بين رجليك.
movement-side-lying-abduction-how = ارفع رجلك العليا إلى الأعلى مباشرة. أبق ركبتك مستقيمة. اثبت. أنزلها ببطء إلى الوسادة.
movement-side-lying-abduction-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك العلوي.
movement-side-lying-abduction-faults = أبق أحد وركيك فوق الآخر تماما. أبق أصابع قدمك متجهة إلى الأمام.

movement-side-lying-abduction-cuff-name = رفع الرجل جانبا بثقل، استلقاء
movement-side-lying-abduction-cuff-set-up = ثبّت الثقل فوق كاحلك مباشرة. استلق على جنبك. الرجل التي عليها الثقل في الأعلى. اثن رجلك السفلى قليلا. ضع وسادة بين رجليك.
movement-side-lying-abduction-cuff-how = ارفع رجلك العليا إلى الأعلى مباشرة. أبق ركبتك مستقيمة. اثبت. أنزلها ببطء إلى الوسادة.
movement-side-lying-abduction-cuff-feel = تشعر بعمل العضلات في الجهة الخارجية من وركك العلوي ضد الثقل.
movement-side-lying-abduction-cuff-faults = أبق أحد وركيك فوق الآخر تماما. أبق أصابع قدمك متجهة إلى الأمام.

movement-single-knee-to-chest-name = ركبة واحدة إلى الصدر
movement-single-knee-to-chest-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان.
movement-single-knee-to-chest-how = اسحب كعبك على السرير نحو ردفك. أمسك فخذك من الخلف بكلتا يديك. اسحب ركبتك برفق نحو صدرك. اثبت. أنزل رجلك ببطء.
movement-single-knee-to-chest-feel = تشعر بشد خفيف في ردفك وأسفل ظهرك. ذراعاك هما اللتان تسحبان.
movement-single-knee-to-chest-faults = اسحب برفق دائما. أبق رجلك الأخرى ممدودة على السرير.

movement-straight-leg-raise-name = رفع الرجل المستقيمة
movement-straight-leg-raise-set-up = استلق على ظهرك على سطح مستو، ورجلاك ممدودتان.
movement-straight-leg-raise-how = شد مقدمة فخذك أولا. ارفع رجلك والركبة مستقيمة. اثبت. أنزل رجلك ببطء إلى السرير.
movement-straight-leg-raise-feel = تشعر بعمل العضلات في مقدمة فخذك ووركك.
movement-straight-leg-raise-faults = أبق ركبتك مستقيمة من البداية إلى النهاية.

movement-straight-leg-raise-cuff-name = رفع الرجل المستقيمة بثقل
movement-straight-leg-raise-cuff-set-up = ثبّت الثقل فوق كاحلك مباشرة. استلق على ظهرك على سطح مستو، ورجلاك ممدودتان.
movement-straight-leg-raise-cuff-how = شد مقدمة فخذك أولا. ارفع رجلك والركبة مستقيمة. اثبت. أنزل رجلك ببطء إلى السرير.
movement-straight-leg-raise-cuff-feel = تشعر بعمل العضلات في مقدمة فخذك ووركك ضد الثقل.
movement-straight-leg-raise-cuff-faults = أبق ركبتك مستقيمة من البداية إلى النهاية.
