### When to stop, and whom to ring.

contacts-title = When to stop and ring
contacts-whom = Whom to ring
contacts-ring-clinic = Ring { $clinic }
contacts-ring-night = Evenings, nights and weekends
contacts-ring-emergency = Emergency
contacts-remember = Please remember
contacts-unwell = I feel unwell or dizzy
contacts-happened = Has something happened?
contacts-fell = I had a fall
contacts-hospital = I was in hospital
contacts-fell-means = This writes down that you had a fall. Then nothing new opens until your clinic says so, and no exercise starts until you have spoken to them.
contacts-hospital-means = This writes down that you were in hospital. Then nothing new opens until your clinic says so, and no exercise starts until you have spoken to them.
contacts-write-fell = Yes, I had a fall
contacts-write-hospital = Yes, I was in hospital
contacts-not-so = No, go back
contacts-back = Back
