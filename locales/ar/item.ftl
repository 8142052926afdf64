### تمرين واحد؛ وما أُنجز منه دون البرنامج؛ وإيقافه.

item-set-up = الاستعداد
item-how = طريقة التمرين
item-feel = ما تشعر به
item-watch = انتبه إلى هذا
item-note = من عيادتك
item-begin = بدء هذا التمرين

item-did = قمت به دون البرنامج
item-rounds = عدد الجولات
item-each = العدد في كل جولة (مرات أو أنفاس أو دقائق أو خطوات)
item-fewer = أقل بواحد
item-more = أكثر بواحد
item-when = متى كان ذلك؟
item-today = اليوم
item-yesterday = أمس
item-from-memory = يُسجل على أنه من الذاكرة.
item-write = تسجيل

item-told-to-stop = طلبت مني عيادتي إيقاف هذا
item-stop-sure = لن يُعرض عليك بعد الآن، حتى تقول إن عيادتك تسمح به من جديد.
item-stop-yes = نعم، إيقافه
item-stop-no = لا، يبقى كما هو
item-take-up = عيادتي تسمح بهذا من جديد
item-take-up-sure = يُعرض عليك من جديد إذا سمحت قواعد عيادتك.
item-take-up-yes = نعم، عرضه من جديد
