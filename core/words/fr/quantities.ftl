### Chiffres avec leurs unités.

quantity-between = { $from } à { $to } { $unit }
