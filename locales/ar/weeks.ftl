### أسابيع الخطة على خط.

weeks-title = أسابيعك
weeks-from-to = الأسابيع من { $first } إلى { $last }
weeks-now = هذا الأسبوع
weeks-gates = { $n ->
    [zero] لا يُتاح أي تمرين
    [one] يُتاح تمرين واحد
    [two] يُتاح تمرينان
    [few] تُتاح { $n } تمارين
    [many] يُتاح { $n } تمرينًا
   *[other] يُتاح { $n } تمرين
}
