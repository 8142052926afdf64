### ما يقرؤه المريض ويسمعه عن كل حركة للذراع والكتف. الجانب والعدد ومدة الثبات يقولها البرنامج، فلا تُذكر هنا.
### خمس رسائل لكل حركة: اسمها، والاستعداد، وطريقتها، وما تشعر به، وما يجب الانتباه إليه.

movement-elbow-bend-name = ثني المرفق ومده
movement-elbow-bend-set-up = اجلس على كرسي ثابت وظهرك مستقيم. دع ذراعك تتدلى بجانبك، وراحة يدك إلى الأمام. ضع يدك الأخرى على فخذك.
movement-elbow-bend-how = اثن مرفقك وقرّب يدك من كتفك. أنزل يدك ببطء. مد مرفقك تماما.
movement-elbow-bend-feel = تشعر بعمل العضلات في مقدمة أعلى الذراع.
movement-elbow-bend-faults = أبق أعلى ذراعك ثابتا، قريبا من جانبك.

movement-isometric-rotation-name = دفع اليد إلى الخارج
movement-isometric-rotation-set-up = قف وجسمك مستقيم، وذراعك بجانب جدار. اثن مرفقك عند جانبك، وضع منشفة مطوية تحت أعلى ذراعك. ضع ظهر يدك على الجدار.
movement-isometric-rotation-how = ادفع الجدار بظهر يدك إلى الخارج، برفق. أبق ذراعك ثابتة. اثبت. أرخ ببطء.
movement-isometric-rotation-feel = تشعر بعمل خفيف للعضلات خلف كتفك.
movement-isometric-rotation-faults = أبق المنشفة في مكانها تحت ذراعك. ادفع برفق دائما.

movement-isometric-rotation-inward-name = دفع اليد إلى الداخل
movement-isometric-rotation-inward-set-up = قف وجسمك مستقيم، قريبا من إطار باب. اثن مرفقك عند جانبك، وضع منشفة مطوية تحت أعلى ذراعك. ضع راحة يدك على الإطار.
movement-isometric-rotation-inward-how = ادفع الإطار براحة يدك إلى الداخل، برفق. أبق ذراعك ثابتة. اثبت. أرخ ببطء.
movement-isometric-rotation-inward-feel = تشعر بعمل خفيف للعضلات في مقدمة كتفك.
movement-isometric-rotation-inward-faults = أبق المنشفة في مكانها تحت ذراعك. ادفع برفق دائما.

movement-pendulum-name = تأرجح الذراع المرتخية
movement-pendulum-set-up = قف بجانب طاولة ثابتة. انحن إلى الأمام واستند عليها بيدك الأخرى. دع ذراعك تتدلى مرتخية.
movement-pendulum-how = حرك جسمك برفق إلى الأمام وإلى الخلف. دع ذراعك تتأرجح معه وحدها. انتظر حتى يهدأ التأرجح قبل أن تعتدل.
movement-pendulum-feel = تشعر بذراعك متدلية ومرتخية وثقيلة. يرتاح كتفك بينما يتحرك جسمك.
movement-pendulum-faults = أبق ذراعك مرتخية. دع جسمك يصنع التأرجح.

movement-pendulum-sideways-name = تأرجح الذراع من جانب إلى جانب
movement-pendulum-sideways-set-up = قف بجانب طاولة ثابتة. انحن إلى الأمام واستند عليها بيدك الأخرى. دع ذراعك تتدلى مرتخية.
movement-pendulum-sideways-how = حرك جسمك برفق من جانب إلى جانب. دع ذراعك تتأرجح معه وحدها. انتظر حتى يهدأ التأرجح قبل أن تعتدل.
movement-pendulum-sideways-feel = تشعر بذراعك متدلية ومرتخية وثقيلة. يرتاح كتفك بينما يتحرك جسمك.
movement-pendulum-sideways-faults = أبق ذراعك مرتخية. دع جسمك يصنع التأرجح.

movement-shoulder-blade-squeeze-name = ضم لوحي الكتف
movement-shoulder-blade-squeeze-set-up = اجلس على كرسي ثابت وظهرك مستقيم، بعيدا قليلا عن مسند الظهر. اثن مرفقيك وأبقهما قريبين من جانبيك.
movement-shoulder-blade-squeeze-how = اسحب لوحي كتفيك إلى الخلف وضمهما. دع مرفقيك يرجعان معهما. اثبت. أرخ ببطء.
movement-shoulder-blade-squeeze-feel = تشعر بعمل العضلات بين لوحي كتفيك.
movement-shoulder-blade-squeeze-faults = أبق كتفيك منخفضين، بعيدين عن أذنيك. استمر في التنفس أثناء الثبات.

movement-shoulder-blade-squeeze-band-name = شد شريط بين اليدين، جلوسا
movement-shoulder-blade-squeeze-band-set-up = اجلس على كرسي ثابت وظهرك مستقيم، بعيدا قليلا عن مسند الظهر. اثن مرفقيك وأبقهما عند جانبيك. أمسك الشريط أمامك بكلتا يديك.
movement-shoulder-blade-squeeze-band-how = شد الشريط بإبعاد يديك. اسحب لوحي كتفيك إلى الخلف وضمهما. اثبت. دع الشريط يرجع ببطء.
movement-shoulder-blade-squeeze-band-feel = تشعر بعمل العضلات بين لوحي كتفيك وخلف كتفيك.
movement-shoulder-blade-squeeze-band-faults = أبق مرفقيك عند جانبيك. أبق كتفيك منخفضين، بعيدين عن أذنيك.

movement-stick-external-rotation-name = الساعد إلى الخارج بعصا
movement-stick-external-rotation-set-up = استلق على ظهرك على سطح مستو. أبق مرفقيك مثنيين وبجانب جسمك. أمسك العصا فوقك بكلتا يديك.
movement-stick-external-rotation-how = ادفع العصا إلى الجانب بذراعك الأخرى. دعها تدير ساعدك إلى الخارج. توقف عندما تشعر بالشد. أرجع العصا ببطء.
movement-stick-external-rotation-feel = تشعر بشد خفيف في مقدمة كتفك. ذراعك الأخرى هي التي تعمل.
movement-stick-external-rotation-faults = أبق مرفقك مثنيا وقريبا من جانبك.

movement-stick-flexion-name = رفع الذراعين بعصا
movement-stick-flexion-set-up = استلق على ظهرك على سطح مستو. أمسك العصا بكلتا يديك، وضعها على فخذيك.
movement-stick-flexion-how = أبق مرفقيك ممدودين. ارفع العصا نحو رأسك. دع ذراعك الأخرى تقوم بالرفع. توقف عندما تشعر بالشد. أنزل العصا ببطء.
movement-stick-flexion-feel = تشعر بشد خفيف حول كتفك. ذراعك الأخرى هي التي تعمل.
movement-stick-flexion-faults = أبق ظهرك منبسطا على السرير.

movement-stick-flexion-sitting-name = رفع الذراعين بعصا، جلوسا
movement-stick-flexion-sitting-set-up = اجلس على كرسي ثابت وظهرك مستقيم، وقدماك كاملتان على الأرض. أمسك العصا بكلتا يديك، وضعها على فخذيك.
movement-stick-flexion-sitting-how = ارفع العصا إلى الأمام ثم إلى الأعلى. دع ذراعك الأخرى تقوم بالرفع. توقف فوق مستوى كتفيك بقليل، أو قبل ذلك إذا شعرت بالشد. أنزل العصا ببطء.
movement-stick-flexion-sitting-feel = تشعر بشد خفيف حول كتفك. ذراعك الأخرى هي التي تعمل.
movement-stick-flexion-sitting-faults = أبق ظهرك مستقيما، دون ميل إلى الخلف. أبق كتفك منخفضا، بعيدا عن أذنك.

movement-stick-flexion-to-90-name = العصا نحو السقف
movement-stick-flexion-to-90-set-up = استلق على ظهرك على سطح مستو. أمسك العصا بكلتا يديك، وضعها على فخذيك.
movement-stick-flexion-to-90-how = ارفع العصا ودع مرفقيك يمتدان. دع ذراعك الأخرى تقوم بالرفع. توقف عندما تتجه ذراعاك نحو السقف. توقف قبل ذلك إذا شعرت بالشد. أنزل العصا ببطء.
movement-stick-flexion-to-90-feel = تشعر بشد خفيف حول كتفك. ذراعك الأخرى هي التي تعمل.
movement-stick-flexion-to-90-faults = أبق ظهرك منبسطا على السرير. أبق ذراعك مرتخية.

movement-table-slide-name = تمرير الذراع على طاولة
movement-table-slide-set-up = اجلس أمام طاولة على كرسي ثابت. ضع يدك على منشفة مطوية فوق الطاولة.
movement-table-slide-how = مرر يدك إلى الأمام على الطاولة. دع جسمك يميل معها. توقف عندما تشعر بالشد. أرجع يدك ببطء.
movement-table-slide-feel = تشعر بشد خفيف حول كتفك وتحت ذراعك.
movement-table-slide-faults = أبق كتفك منخفضا، بعيدا عن أذنك.

movement-table-slide-incline-name = تمرير الذراع على لوح مائل
movement-table-slide-incline-set-up = ضع لوحا مائلا على طاولة، بحيث لا ينزلق. اجلس أمام الطاولة على كرسي ثابت. ضع يدك على منشفة مطوية، في أسفل اللوح.
movement-table-slide-incline-how = مرر يدك على اللوح إلى الأعلى. دع جسمك يميل معها. توقف عندما تشعر بالشد. أنزل يدك على اللوح ببطء.
movement-table-slide-incline-feel = تشعر بشد خفيف حول كتفك وتحت ذراعك.
movement-table-slide-incline-faults = أبق كتفك منخفضا، بعيدا عن أذنك. أبق يدك مستندة على المنشفة.
