### Zahlen mit ihren Einheiten.

quantity-between = { $from } bis { $to } { $unit }
