### جرعات تزيد وتنقص خطوة، ضمن ما وقعته العيادة.

steps-at = الخطوة { $step } من { $steps }.
steps-at-after-break = أخف اليوم، بعد انقطاعك. وبعد ذلك الخطوة { $step } من { $steps }.
steps-offer = ⁨{ $name }⁩: تسمح عيادتك بزيادة خطوة واحدة. { $dose }
steps-ask = هل تريد ذلك؟
steps-yes = نعم، زيادة خطوة
steps-not-now = ليس الآن
steps-up-done = حسنًا، زيادة خطوة واحدة. من المرة القادمة، ⁨{ $name }⁩: { $dose }
steps-kept = حسنًا. لا تغيير في ⁨{ $name }⁩: { $dose }
steps-down = تخفيف خطوة
steps-down-sure = يمكنك التخفيف في أي وقت. أما الزيادة من جديد فحسب قاعدة عيادتك فقط.
steps-down-yes = نعم، تخفيف خطوة
steps-down-no = لا، يبقى كما هو
steps-down-done = تخفيف خطوة واحدة. من المرة القادمة، ⁨{ $name }⁩: { $dose }
steps-down-hurt = كان مؤلمًا، لذلك تخفيف خطوة واحدة. من المرة القادمة، ⁨{ $name }⁩: { $dose }

ask-step = { $offer } هل تريد ذلك؟ نعم أو لا
steps-how-up = لزيادة خطوة، اكتب: ⁨sendaluna step up { $item }⁩

ask-pain-morning = ما شدة ألمك هذا الصباح، عند الاستيقاظ؟ من 0 (لا ألم) إلى 10 (أسوأ ألم يمكن تخيله)
before-morning = ما شدة ألمك هذا الصباح، عند الاستيقاظ؟
morning-rose = كان ألمك هذا الصباح أشد مما كان أمس قبل التمارين. أخبر عيادتك.
morning-stepped = ⁨{ $name }⁩: تخفيف خطوة واحدة اليوم. { $dose }
