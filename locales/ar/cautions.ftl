### تنبيهات. تظهر حيثما كانت مهمة.

caution-plan-is-clinics = هذه الخطة من عيادتك. توقف واتصل بها إذا ظهر شيء جديد أو صار شيء أسوأ.
caution-nobody-sees = لا أحد في العيادة يرى هذا الآن. اتصل بها.
caution-nobody-sees-emergency = لا أحد في العيادة يرى هذا الآن. اتصل أولا بالرقم ⁨{ $number }⁩.
caution-nobody-sees-if-worried = لا أحد في العيادة يرى هذا الآن. إذا شعرت بالقلق فاتصل بها.
caution-emergency = في حالة الطوارئ، اتصل بالرقم ⁨{ $phone }⁩.
caution-not-medical = برنامج Sendaluna ليس جهازا طبيا ولا يقدم نصائح طبية.
