### الخطة على الورق.

sheet-title = خطتك
sheet-for = إلى ⁨{ $called }⁩
sheet-by = من ⁨{ $clinic }⁩
sheet-revision = الإصدار { $revision }، { $day }
sheet-foot = خطة ⁨{ $called }⁩، الإصدار { $revision }
sheet-page = صفحة { $n } من { $of }
sheet-after = بعد: ⁨{ $name }⁩، { $side }. اليوم 0: { $day }.
sheet-side-left = الجانب الأيسر
sheet-side-right = الجانب الأيمن
sheet-side-both = الجانبان
sheet-side-neither = لا الأيسر ولا الأيمن
sheet-holds = هذه الورقة صالحة حتى نهاية يوم { $day }. تنتهي الخطة يوم { $last }.
sheet-newer = إذا أعطتك عيادتك إصدارا أحدث، فضع هذه الورقة جانبا.
sheet-review = بعد يوم { $day } لا يتاح شيء جديد حتى تراجع عيادتك خطتك من جديد. اتصل بها.
sheet-review-week = فقط إذا راجعت عيادتك خطتك من جديد

sheet-stop = متى تتوقف، وبمن تتصل
sheet-stop-emergency = توقف. اتصل فورا بالرقم ⁨{ $phone }⁩
sheet-stop-ring = لا تمارين اليوم. اتصل بعيادتك اليوم
sheet-stop-note = اكتب ذلك، وتابع
sheet-whom = بمن تتصل
sheet-whom-day = في ساعات العمل
sheet-whom-night = المساء والليل وعطلة نهاية الأسبوع
sheet-whom-emergency = الطوارئ

sheet-pain = إذا شعرت بألم
sheet-pain-scale = أعطه رقما: 0 يعني لا ألم، و 10 أسوأ ألم يمكن تخيله.
sheet-pain-when = ما تشعر به
sheet-pain-do = ما تفعله
sheet-pain-rest = أثناء الراحة، قبل أن تبدأ: { $level } أو أكثر
sheet-pain-rest-do = لا تمارين اليوم. اتصل بعيادتك.
sheet-pain-during = أثناء التمرين: { $level } أو أكثر
sheet-pain-slow-do = تابع برفق.
sheet-pain-easier-do = استعمل الطريقة الأسهل، إن وجدت.
sheet-pain-stop-do = أوقف هذا التمرين لهذا اليوم.
sheet-pain-today-do = توقف لهذا اليوم. اتصل بعيادتك.
sheet-pain-rise = أثناء التمرين: أكثر بمقدار { $level } مما كان قبل أن تبدأ
sheet-pain-sharp = ألم حاد أو كالطعنة، حتى لو كان قليلا
sheet-pain-settle = بعد التمرين: يجب أن يهدأ خلال { $minutes ->
    [zero] { $minutes } دقيقة
    [one] دقيقة واحدة
    [two] دقيقتين
    [few] { $minutes } دقائق
    [many] { $minutes } دقيقة
   *[other] { $minutes } دقيقة
}
sheet-pain-settle-do = إن لم يهدأ، فافعل أقل في المرة القادمة، وأخبر عيادتك.
sheet-pain-morning = في الصباح التالي: أكثر بمقدار { $level } مما كان قبل التمارين
sheet-pain-morning-do = افعل أقل اليوم. أخبر عيادتك.

sheet-rules = قواعد لكل يوم
sheet-rule = القاعدة
sheet-until = حتى متى
sheet-who = بتعليمات من
sheet-not-opened = احتياطات لم تتغير

sheet-week = الأسبوع
sheet-days = الأيام
sheet-what = المرحلة
sheet-opens = ما يتاح
sheet-weeks-of = أسابيعك بعد: ⁨{ $name }⁩
sheet-unknown-zero = يوم العملية غير معروف بعد. عندما يُعرف، اطلب من عيادتك ورقة جديدة.

sheet-what-to-do = ما تفعله في كل أسبوع
sheet-exercise = التمرين
sheet-how-often = كم مرة
sheet-how-much = المقدار
sheet-stage-weeks = الأسابيع من { $from } إلى { $through }
sheet-stage-week = الأسبوع { $from }
sheet-stage-days = من { $from } إلى { $through }
sheet-round = { $items }: جولة من كل تمرين بالدور، { $rounds ->
    [zero] { $rounds } مرة
    [one] مرة واحدة
    [two] مرتين
    [few] { $rounds } مرات
    [many] { $rounds } مرة
   *[other] { $rounds } مرة
}. استرح { $rest ->
    [zero] { $rest } ثانية
    [one] ثانية واحدة
    [two] ثانيتين
    [few] { $rest } ثوان
    [many] { $rest } ثانية
   *[other] { $rest } ثانية
} بعد كل دور.
sheet-not-in-stage = ليس في أي أسبوع بعد
sheet-not-in-stage-why = خطتك لا تطلب هذه التمارين بعد.

when-times-a-day = { $times ->
    [1] مرة واحدة في اليوم.
    [2] مرتين في اليوم.
    [zero] { $times } مرة في اليوم.
    [one] مرة واحدة في اليوم.
    [two] مرتين في اليوم.
    [few] { $times } مرات في اليوم.
    [many] { $times } مرة في اليوم.
   *[other] { $times } مرة في اليوم.
}
when-hours-between = { $hours ->
    [1] بفاصل ساعة واحدة على الأقل.
    [zero] بفاصل { $hours } ساعة على الأقل.
    [one] بفاصل ساعة واحدة على الأقل.
    [two] بفاصل ساعتين على الأقل.
    [few] بفاصل { $hours } ساعات على الأقل.
    [many] بفاصل { $hours } ساعة على الأقل.
   *[other] بفاصل { $hours } ساعة على الأقل.
}
when-every-hours = { $hours ->
    [zero] كل { $hours } ساعة، خلال ساعات الاستيقاظ.
    [one] كل ساعة، خلال ساعات الاستيقاظ.
    [two] كل ساعتين، خلال ساعات الاستيقاظ.
    [few] كل { $hours } ساعات، خلال ساعات الاستيقاظ.
    [many] كل { $hours } ساعة، خلال ساعات الاستيقاظ.
   *[other] كل { $hours } ساعة، خلال ساعات الاستيقاظ.
}
when-weekdays = في أيام { $days }.
when-days-a-week = { $days ->
    [zero] في { $days } يوما من الأسبوع، ولا يومين متتاليين أبدا.
    [one] في يوم واحد من الأسبوع.
    [two] في يومين من الأسبوع، غير متتاليين.
    [few] في { $days } أيام من الأسبوع، ولا يومين متتاليين أبدا.
    [many] في { $days } يوما من الأسبوع، ولا يومين متتاليين أبدا.
   *[other] في { $days } يوما من الأسبوع، ولا يومين متتاليين أبدا.
}
when-as-needed = عند الحاجة. { $most ->
    [zero] { $most } مرة في اليوم على الأكثر.
    [one] مرة واحدة في اليوم على الأكثر.
    [two] مرتين في اليوم على الأكثر.
    [few] { $most } مرات في اليوم على الأكثر.
    [many] { $most } مرة في اليوم على الأكثر.
   *[other] { $most } مرة في اليوم على الأكثر.
}
when-times-that-day = { $times ->
    [zero] { $times } مرة في مثل هذا اليوم.
    [one] مرة واحدة في مثل هذا اليوم.
    [two] مرتين في مثل هذا اليوم.
    [few] { $times } مرات في مثل هذا اليوم.
    [many] { $times } مرة في مثل هذا اليوم.
   *[other] { $times } مرة في مثل هذا اليوم.
}

sheet-exercises = تمارينك، واحدا واحدا
sheet-start = البداية
sheet-end = النهاية
sheet-figure-still = ⁨{ $name }⁩: هكذا يبدو.
sheet-figure-start = ⁨{ $name }⁩: البداية.
sheet-figure-end = ⁨{ $name }⁩: النهاية.
sheet-have-ready = جهز: { $things }.
sheet-beside = فقط مع شخص بجانبك.
sheet-brace = أبق الدعامة أو الحمالة عليك.
sheet-set-up = الاستعداد
sheet-how = طريقة التمرين
sheet-feel = ما تشعر به
sheet-watch = انتبه إلى هذا
sheet-note = من عيادتك
sheet-easier = طريقة أسهل للتمرين { $of }: ⁨{ $name }⁩
sheet-easier-see = طريقة أسهل للتمرين { $of }: ⁨{ $name }⁩. انظر التمرين { $n }.
sheet-dose-elsewhere = في بعض الأسابيع يكون أكثر أو أقل: انظر «{ $title }».
sheet-tempo = العد: حتى { $out } في الذهاب، وحتى { $hold } في الثبات، وحتى { $back } في الرجوع، وحتى { $pause } في الاسترخاء.
sheet-tempo-no-hold = العد: حتى { $out } في الذهاب، وحتى { $back } في الرجوع، وحتى { $pause } في الاسترخاء.
sheet-breath = خذ نفسا وأنت تعد حتى { $in }. أخرج النفس وأنت تعد حتى { $out }.
sheet-graded = مستوى بعد مستوى
sheet-graded-step = المستوى { $n } من { $of }: { $dose }
sheet-graded-start = تبدأ بالمستوى { $n }.
sheet-graded-now = أنت اليوم عند المستوى { $step } من { $steps }.
sheet-graded-up = المستوى التالي بعد { $sessions ->
    [zero] { $sessions } جلسة كاملة متتالية
    [one] جلسة كاملة واحدة
    [two] جلستين كاملتين متتاليتين
    [few] { $sessions } جلسات كاملة متتالية
    [many] { $sessions } جلسة كاملة متتالية
   *[other] { $sessions } جلسة كاملة متتالية
}، إذا كان الألم { $pain } على الأكثر. فقط إذا أردت، وليس بعد انقطاع.
sheet-graded-up-effort = المستوى التالي بعد { $sessions ->
    [zero] { $sessions } جلسة كاملة متتالية
    [one] جلسة كاملة واحدة
    [two] جلستين كاملتين متتاليتين
    [few] { $sessions } جلسات كاملة متتالية
    [many] { $sessions } جلسة كاملة متتالية
   *[other] { $sessions } جلسة كاملة متتالية
}، إذا كان الألم { $pain } على الأكثر والجهد { $effort } على الأكثر. فقط إذا أردت، وليس بعد انقطاع.
sheet-graded-down = خفف مستوى واحدا فورا إذا زاد الألم على { $pain }.
sheet-ramp = { $grows ->
    [sets] عدد الجولات في البداية: { $start }. زد { $step } كل { $days ->
        [zero] { $days } يوم
        [one] يوم
        [two] يومين
        [few] { $days } أيام
        [many] { $days } يوما
       *[other] { $days } يوم
    }، حتى { $cap }.
    [repetitions] عدد المرات في البداية: { $start }. زد { $step } كل { $days ->
        [zero] { $days } يوم
        [one] يوم
        [two] يومين
        [few] { $days } أيام
        [many] { $days } يوما
       *[other] { $days } يوم
    }، حتى { $cap }.
    [hold] ثواني الثبات في البداية: { $start }. زد { $step } كل { $days ->
        [zero] { $days } يوم
        [one] يوم
        [two] يومين
        [few] { $days } أيام
        [many] { $days } يوما
       *[other] { $days } يوم
    }، حتى { $cap }.
   *[minutes] عدد الدقائق في البداية: { $start }. زد { $step } كل { $days ->
        [zero] { $days } يوم
        [one] يوم
        [two] يومين
        [few] { $days } أيام
        [many] { $days } يوما
       *[other] { $days } يوم
    }، حتى { $cap }.
}
sheet-ramp-yes = فقط إذا سار الأمر جيدا، وليس بعد انقطاع.

sheet-care = العناية بنفسك
sheet-care-times = { $times ->
    [0] كما قالت لك عيادتك.
    [zero] كما قالت لك عيادتك.
    [one] مرة واحدة في اليوم.
    [two] مرتين في اليوم.
    [few] { $times } مرات في اليوم.
    [many] { $times } مرة في اليوم.
   *[other] { $times } مرة في اليوم.
}

sheet-return = بعد انقطاع
sheet-return-start = بعد { $days ->
    [zero] { $days } يوم
    [one] يوم واحد
    [two] يومين
    [few] { $days } أيام
    [many] { $days } يوما
   *[other] { $days } يوم
} أو أكثر دون تمارين، افعل أقل في المرة الأولى:
sheet-return-same = بعد { $days ->
    [zero] { $days } يوم
    [one] يوم واحد
    [two] يومين
    [few] { $days } أيام
    [many] { $days } يوما
   *[other] { $days } يوم
} أو أكثر دون تمارين، انتبه لنفسك في المرة الأولى.
sheet-return-ring = بعد { $days ->
    [zero] { $days } يوم
    [one] يوم واحد
    [two] يومين
    [few] { $days } أيام
    [many] { $days } يوما
   *[other] { $days } يوم
} أو أكثر، اتصل بعيادتك قبل أن تبدأ من جديد.

sheet-tests = اختبارات في البيت
sheet-tests-helper = فقط مع من يساعدك بجانبك، وفقط إذا سمحت قواعد عيادتك حينها. إذا لم تشعر بالأمان فتوقف واجلس.
sheet-test-chair-stand-count = يعد من يساعدك كم مرة تنهض وتستقيم، ويكتب ذلك.
sheet-test-timed-up-and-go-time = يقيس من يساعدك الوقت، من «هيا» حتى تجلس من جديد، ويكتبه.
sheet-test-four-stage-balance-time = يقيس من يساعدك وقت كل وقفة، حتى تتحرك قدماك أو تمسك بشيء. لا تنتقل إلى التالية إذا لم تستطع الوقوف 10 ثوان.
sheet-test-weeks = من الأسبوع { $from }، { $every ->
    [zero] كل { $every } أسبوع.
    [one] كل أسبوع.
    [two] كل أسبوعين.
    [few] كل { $every } أسابيع.
    [many] كل { $every } أسبوعا.
   *[other] كل { $every } أسبوع.
}

sheet-cautions = للتذكير
sheet-tick = أسبوعي
sheet-tick-how = ارسم خطا لكل مرة. اكتب الألم قبل التمارين وبعدها.
sheet-tick-pain = الألم قبل وبعد

sheet-written = خطتك لتعليقها على الثلاجة: ⁨{ $path }⁩
