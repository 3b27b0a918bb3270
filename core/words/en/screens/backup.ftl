### A backup, and what comes back of it.

backup-title = Back up
backup-last = Last backup
backup-last_on = Last on { $on }
backup-never = Never backed up
backup-due = It is time for another.
backup-due_lead = Back up.
backup-due_text = What is only on this device goes when the device goes.
backup-free = Free space
backup-free_n = { $free } free
backup-low = Photos may soon find no room. Back up, then make room on the device.
backup-low_lead = { $free } free.
backup-mb = { $n } MB
backup-gb = { $n } GB
backup-word = Passphrase, 10 characters or more
backup-word_note = Four words are good. Write it down and keep it apart from the file: nobody can recover it.
backup-what = All repairs, photos, certificates and keys go into one locked file. Every program that reads the age format opens it with the passphrase.
backup-act = Make the backup
backup-act_note = locked with the passphrase
backup-made = The backup is made
backup-files =
  { $n ->
    [one] 1 file in it
   *[other] { $n } files in it
  }
backup-away = Keep it elsewhere.
backup-away_text = On another device, a stick or the office’s storage. Beside the phone it is lost with the phone.
restore-title = Restore a backup
restore-note = On a new or empty device
restore-text = Everything of the backup comes back: repairs, photos, certificates, keys. It needs an empty device.
restore-file = The backup (.tar.age)
restore-word = Its passphrase
restore-device = This counts as a new device with a key of its own. Tell the office, and revoke the keys of a lost device.
restore-act = Restore
restore-act_note = all of it, or nothing
restore-done = Everything is back
restore-files = Files
restore-damaged =
  { $n ->
    [one] 1 chain was
   *[other] { $n } chains were
  } broken when the backup was made. They are as they were.
restore-people = Pick who you are before you go on.
