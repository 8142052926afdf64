### مشكلات فيما تكتبه العيادة. يأتي الموضع قبل كل واحدة.

problem-missing = هذا ناقص.
problem-out-of-bounds = القيمة ⁨{ $value }⁩ خارج المجال من ⁨{ $least }⁩ إلى ⁨{ $most }{ $unit }⁩.
problem-too-long = عدد المدخلات { $value } أكثر مما يُسمح به؛ المسموح به { $most }.
problem-empty-text = النص فارغ.
problem-hidden-characters = في النص محارف غير مرئية قد تغير طريقة قراءته.
problem-language-missing = ينقص النص باللغة ⁨{ $lang }⁩، وهي من لغات هذه الخطة.
problem-repeated-id = ⁨{ $id }⁩ مكرر.
problem-unknown-id = لا يوجد ⁨{ $id }⁩.
problem-weeks-reversed = الأسبوع الأخير قبل الأسبوع الأول.
problem-dates-reversed = اليوم الأخير قبل اليوم الأول.
problem-one-amount = أعط واحدا فقط من هذه: التكرارات، الأنفاس، الدقائق، الخطوات.
problem-tempo-missing = التكرارات والأنفاس تحتاج إلى إيقاع (⁨tempo⁩).
problem-pain-order = درجات الألم ليست مرتبة من الأصغر إلى الأكبر.
problem-counts-reversed = العدد الأكبر يأتي قبل الأصغر.
problem-no-warning-signs = تحتاج الخطة إلى علامات تحذير.
problem-no-emergency-sign = تحتاج الخطة إلى علامة واحدة على الأقل لرقم الطوارئ.
problem-no-conditions = المدخلات أقل من أن يكون لهذا معنى.
problem-one-most = أعط واحدا فقط من ⁨most_kg⁩ و ⁨most_percent⁩.
problem-none-and-some = «لا شيء» (⁨none⁩) والاحتياطات متعارضان.
problem-joint-motion = لا توجد حركة { $motion } في { $joint }.
problem-not-a-key = هذا ليس مفتاحا من النوع الصحيح.
problem-no-rights = من لا صلاحيات له لا يمكنه توقيع شيء.
problem-repeated-day = يوم مكرر.
problem-zone-unknown = لا توجد منطقة زمنية ⁨{ $zone }⁩.
problem-episode-differs = الجانب أو اليوم 0 في ⁨{ $id }⁩ ليس كما في بيانات الاحتياطات.
problem-statement-none = لا يوجد بيان احتياطات من شخص يحق له وضع الاحتياطات. «لا شيء» (⁨none⁩) يُوقّع أيضا.
problem-person-differs = أحد بيانات الاحتياطات لشخص آخر.
problem-other-format = يكتب هذا البرنامج ويقرأ الصيغة 1.
problem-precaution-changed = للاحتياط ⁨{ $id }⁩ محتوى غير محتواه السابق. أعطه معرفا جديدا.
problem-unknown-family = لا ينتمي أي تمرين إلى العائلة ⁨{ $id }⁩. الموجود: ⁨{ $known }⁩.
problem-not-a-number = لا يوجد هنا رقم هاتف.
problem-not-restated = الاحتياط ⁨{ $id }⁩ من الملف السابق موقّع بمفتاح لم يعد موثوقا. اطلب أن يُوقّع من جديد، بالمعرف نفسه والمحتوى نفسه.

# تأتي بعد الحد الأعلى: «من 1 إلى 260 بالأسابيع».
unit-weeks = بالأسابيع
unit-days = بالأيام
unit-characters = بعدد المحارف
unit-body-weight = % من وزن الجسم
