### Figures with their units.

quantity-between = { $from } to { $to } { $unit }
