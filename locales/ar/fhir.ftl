### التقرير في مستند FHIR: عنوانه وعناوين أقسامه واسم كل ملاحظة فيه.

fhir-type = تقرير عن التمارين في البيت
fhir-title = التمارين في البيت: ⁨{ $called }⁩، من { $from } إلى { $through }
fhir-for = إلى ⁨{ $clinic }⁩.
fhir-patient = ⁨{ $called }⁩، سنة الميلاد { $born }
fhir-program = برنامج يقود التمارين في البيت
fhir-when = متى
fhir-what = ماذا

fhir-flags = ما يحتاج إلى اتصال أو حديث
fhir-flags-none = لا شيء يحتاج إلى اتصال أو حديث.

fhir-done = الأيام والتمارين
fhir-days = الأيام، وتُحسب الانقطاعات التي أعلنها المريض أياما مطلوبة
fhir-days-without-breaks = الأيام، دون الانقطاعات التي أعلنها المريض
fhir-exercise = ⁨{ $name }⁩: الجولات المنجزة من الجولات المطلوبة
fhir-prescribed = مطلوبة
fhir-offered = معروضة، عند الحاجة

fhir-feeling = الألم والجهد، من 0 إلى 10
fhir-answer = الجواب
fhir-pain-before = الألم قبل التمارين، أثناء الراحة
fhir-pain-during = الألم أثناء التمارين
fhir-pain-after = الألم بعد التمارين
fhir-pain-next-morning = الألم في الصباح التالي
fhir-during = أثناء: ⁨{ $name }⁩
fhir-distress = ضيق لاحظه المساعد، سئل عنه بدل رقم للألم
fhir-distress-none = لا يوجد
fhir-distress-some = قليل
fhir-distress-much = كثير
fhir-helper = مساعد في البيت
fhir-effort = مقدار الجهد في الجلسة: 0 مثل الراحة، 10 كل الطاقة

fhir-tests = اختبارات في البيت
fhir-test = الاختبار
fhir-result = النتيجة
fhir-verdict = ما يقوله الجدول
fhir-chair-stand = النهوض عن الكرسي في 30 ثانية
fhir-chair-stand-arms = النهوض عن الكرسي في 30 ثانية، مع الدفع بالذراعين
fhir-timed-up-and-go = النهوض والمشي مع قياس الوقت
fhir-four-stage-balance = التوازن في أربع وضعيات
fhir-men = رجال
fhir-women = نساء
fhir-below-average = أقل من هذا دون المتوسط (⁨CDC STEADI⁩).
fhir-no-norm-with-arms = لا معيار: الجدول للنهوض دون الذراعين (⁨CDC STEADI⁩).
fhir-stance-side-by-side = القدمان متجاورتان
fhir-stance-semi-tandem = قدم متقدمة على الأخرى بمقدار نصفها
fhir-stance-tandem = كعب القدم عند أصابع الأخرى
fhir-stance-one-leg = على رجل واحدة
fhir-held = { $stance }: ⁨{ $held }⁩
fhir-not-tried = لم يُجرب

fhir-codes = عن الرموز
fhir-codes-text = حيث يأتي رمز من LOINC بجانب نص، فالنص هو ما سئل عنه أو ما أُنجز، وقد يقول الرمز أقل منه. وتطلب LOINC هذا الإشعار:
fhir-unit-score = من 0 إلى 10
fhir-unit-sets = جولات
fhir-unit-days = أيام
fhir-unit-stands = مرات نهوض في 30 ثانية
fhir-unit-seconds = ث
