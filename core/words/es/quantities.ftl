### Figures with their units.

quantity-between = { $from } a { $to } { $unit }
