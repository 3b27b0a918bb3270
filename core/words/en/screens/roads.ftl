### Repairs on their way to another device and from one.

send-title = Send repairs
send-note = To another phone or the office, as one file
send-one = Send this repair
send-one_note = As one file with its photos, to another device
send-since = Only what changed since (may stay empty)
send-pick = Repairs
send-pick_note = none ticked: all
send-size = { $mb } MB
send-none = There is no repair here yet.
send-act = Make the file
send-act_note = signed by this device, with photos
send-kept = Nothing leaves this device by itself. Save the file, then hand it over by cable, stick, mail or what you have.
send-half = Did the copy break off? Copy the same file again; the other device goes on where it stopped.
send-made = The file is made
send-made_n =
  { $repairs ->
    [one] 1 repair
   *[other] { $repairs } repairs
  }, { $photos ->
    [one] 1 photo
   *[other] { $photos } photos
  }
send-missing =
  { $n ->
    [one] 1 photo is
   *[other] { $n } photos are
  } not here, or changed, and did not go along. The repair is sent all the same.
send-save_again = Save it again
send-broke_off = The file broke off while it was saved. Save it again.
send-saving = Saving: { $done } of { $of } MB
send-key = The key of this device
send-key_note = Tell it to whoever takes the file in, by voice or on paper. So they know that the file is yours.
take-title = Take repairs in
take-note = A file from another phone or the office
take-file = The file (.mendline)
take-key = Key of the sending device, if you were told it
take-key_note = With a key, only a file of that device is taken in.
take-known =
  { $n ->
    [one] 1 device was met before. It is known by its key.
   *[other] { $n } devices were met before. They are known by their keys.
  }
take-act = Take the file in
take-act_note = all of it, or nothing
take-bringing = Taking in: { $done } of { $of } MB
take-stopped = The file stopped on its way. Choose it again: it goes on where it stopped.
take-done = Taken in
take-nothing_new = All of it was here already
take-from = From device
take-its_key = Its key
take-first = This device is met for the first time.
take-first_text = Compare its key with what its person tells you. From now on, only this key speaks for it.
take-photos = Photos
take-fresh =
  { $n ->
    [0] was here already
    [one] 1 new entry
   *[other] { $n } new entries
  }
take-apart = It went on on { $n } devices. All of it is kept; the foreman chooses which counts.
