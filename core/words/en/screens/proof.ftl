### Evidence: the PIN of a key, numbers of certificates.

certificate-supersedes = Takes the place of { $number }.
certificate-went_on = The repair went on after it.
certificate-void = Void this certificate
certificate-void_note = It no longer counts, and its number is never used again. Correct what was wrong, then sign and issue anew: the next one names this one and the reason.
certificate-void_why = Why it does not count
certificate-void_act = Void { $number }
numbers-title = Numbers of this device
numbers-note = every certificate, and what became of it
numbers-all = Certificates
numbers-none = No certificate was issued here yet.
numbers-none_text = Each takes the next number of this device.
numbers-issued = Issued
numbers-superseded = Replaced by { $number }
numbers-voided = Void, and nothing in its place yet
numbers-taken = Given { $at }.
numbers-why = Voided by { $by }, { $at }: { $reason }
key-change = Change the PIN
key-old_pin = Old PIN
key-change_act = Use the new PIN
