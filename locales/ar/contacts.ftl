### متى تتوقف، وبمن تتصل.

contacts-title = متى تتوقف وتتصل
contacts-whom = بمن تتصل
contacts-ring-clinic = اتصل بعيادتك ⁨{ $clinic }⁩
contacts-ring-night = المساء والليل وعطلة نهاية الأسبوع
contacts-ring-emergency = الطوارئ
contacts-remember = للتذكير
contacts-unwell = لست بخير أو أشعر بدوخة
contacts-happened = هل حدث شيء؟
contacts-fell = لقد سقطت
contacts-hospital = كنت في المستشفى
contacts-fell-means = يُسجل هنا أنك سقطت. بعد ذلك لا يتاح شيء جديد حتى تسمح به عيادتك. ولا يبدأ أي تمرين حتى تتحدث مع العيادة.
contacts-hospital-means = يُسجل هنا أنك كنت في المستشفى. بعد ذلك لا يتاح شيء جديد حتى تسمح به عيادتك. ولا يبدأ أي تمرين حتى تتحدث مع العيادة.
contacts-write-fell = نعم، سقطت
contacts-write-hospital = نعم، كنت في المستشفى
contacts-not-so = لا، رجوع
contacts-back = رجوع
