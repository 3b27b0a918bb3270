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
check-originals = The original photos
check-originals_what =
  { $n ->
    [one] The record names 1 photo by its SHA-256. Choose the original to see whether it is the same, byte for byte.
   *[other] The record names { $n } photos by their SHA-256. Choose the originals to see whether they are the same, byte for byte.
  }
check-originals_files = Original photos, as many as you like
check-originals_more = More original photos
check-originals_act = Compare them
check-original_found = there, byte for byte:
check-original_missing = not among the files that were brought
check-originals_sum = Of { $of } photos { $found } are there byte for byte, { $changed } changed, { $missing } not brought yet. A photo that was not brought says nothing about the certificate.
check-original_changed = changed: the file bears its name and holds something else:
check-original_other = not named in the record
check-original_unread = could not be read
check-original_ask = ask why
