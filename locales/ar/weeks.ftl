### أسابيع الخطة على خط.

weeks-title = أسابيعك
weeks-from-to = الأسابيع{"\u00A0"}{ $first }{"\u00A0"}إلى{"\u00A0"}{ $last }
weeks-now = هذا الأسبوع
weeks-gates = { $n ->
    [zero] لا يتاح أي تمرين
    [one] يتاح تمرين واحد
    [two] يتاح تمرينان
    [few] تتاح { $n } تمارين
    [many] يتاح { $n } تمرينا
   *[other] يتاح { $n } تمرين
}
