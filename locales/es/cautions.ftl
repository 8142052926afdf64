### Advertencias. Están en todos los lugares donde importan.

caution-plan-is-clinics = Este plan es de su clínica. Pare y llame a su clínica si algo es nuevo o está peor.
caution-nobody-sees = Nadie de la clínica ve esto ahora. Llame a la clínica.
caution-nobody-sees-emergency = Nadie de la clínica ve esto ahora. Llame primero al { $number }.
caution-nobody-sees-if-worried = Nadie de la clínica ve esto ahora. Si algo le preocupa, llame a la clínica.
caution-emergency = En una emergencia, llame al { $phone }.
caution-not-medical = Sendaluna no es un dispositivo médico y no da consejos médicos.
