### Warnhinweise. Sie stehen überall, wo sie wichtig sind.

caution-plan-is-clinics = Dieser Plan ist von Ihrer Klinik. Ist etwas neu oder schlimmer? Dann hören Sie auf und rufen Sie dort an.
caution-nobody-sees = In der Klinik sieht das jetzt niemand. Rufen Sie dort an.
caution-nobody-sees-emergency = In der Klinik sieht das jetzt niemand. Rufen Sie zuerst { $number } an.
caution-nobody-sees-if-worried = In der Klinik sieht das jetzt niemand. Wenn Sie sich Sorgen machen, rufen Sie dort an.
caution-emergency = Rufen Sie im Notfall { $phone } an.
caution-not-medical = Sendaluna ist kein Medizinprodukt und gibt keinen medizinischen Rat.
