### جرعات تزيد وتنقص مستوى، ضمن ما وقعته العيادة.

steps-at = المستوى { $step } من { $steps }.
steps-at-after-break = أخف اليوم، بعد انقطاعك. وبعد ذلك المستوى { $step } من { $steps }.
steps-offer = ⁨{ $name }⁩: تسمح عيادتك بالمستوى التالي. { $dose }
steps-ask = هل تريد ذلك؟
steps-yes = نعم، المستوى التالي
steps-not-now = ليس الآن
steps-up-done = حسنا، المستوى التالي. من المرة القادمة، ⁨{ $name }⁩: { $dose }
steps-kept = حسنا. لا تغيير في ⁨{ $name }⁩: { $dose }
steps-down = مستوى أخف
steps-down-sure = يمكنك التخفيف في أي وقت. أما الزيادة من جديد فحسب قاعدة عيادتك فقط.
steps-down-yes = نعم، مستوى أخف
steps-down-no = لا، يبقى كما هو
steps-down-done = صار أخف بمستوى واحد. من المرة القادمة، ⁨{ $name }⁩: { $dose }
steps-down-hurt = كان مؤلما، لذلك صار أخف بمستوى واحد. من المرة القادمة، ⁨{ $name }⁩: { $dose }

ask-step = { $offer } هل تريد ذلك؟ نعم أو لا
steps-how-up = للانتقال إلى المستوى التالي، اكتب: ⁨sendaluna step up { $item }⁩

ask-pain-morning = ما شدة ألمك هذا الصباح، عند الاستيقاظ؟ من 0 (لا ألم) إلى 10 (أسوأ ألم يمكن تخيله)
before-morning = ما شدة ألمك هذا الصباح، عند الاستيقاظ؟
morning-rose = كان ألمك هذا الصباح أشد مما كان أمس قبل التمارين. أخبر عيادتك.
morning-stepped = ⁨{ $name }⁩: أخف اليوم بمستوى واحد. { $dose }
