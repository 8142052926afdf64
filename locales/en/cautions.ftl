### Cautions. They stand wherever they matter.

caution-plan-is-clinics = This plan is your clinic's. Stop and ring them if something is new or worse.
caution-nobody-sees = Nobody at the clinic sees this now. Ring them.
caution-nobody-sees-emergency = Nobody at the clinic sees this now. Ring { $number } first.
caution-nobody-sees-if-worried = Nobody at the clinic sees this now. If you are worried, ring them.
caution-emergency = In an emergency, ring { $phone }.
caution-not-medical = Sendaluna is not a medical device and gives no medical advice.
