### Verification, review, signatures, certificate, and the check of a record.

verify-recorded = recorded
verify-open = open
verify-fill = Fill in what is open
verify-fill_note = { $n } of earlier stages
verify-earlier =
  { $n ->
    [one] 1 thing of an earlier stage is open
   *[other] { $n } things of earlier stages are open
  }
verify-earlier_note = filled in now, marked late
verify-edge = { $edge }, { $at }
verify-limit = limit { $n }
verify-inside = inside
verify-too_high = above the limit
verify-no_value = nothing entered
verify-scale = { $value } against the limit of { $most }
verify-limit_from = Limit: { $source }.
verify-laterals = Laterals
verify-laterals_count = covered { $covered }, opened { $opened }
verify-lateral = { $at }, { $hour } h
verify-closed_until = Closed until { $at }. Opened before, it is a departure for the foreman.
verify-may_open = Full cure is reached.
verify-say_opened = It was opened
verify-opened = Opened at { $at } to { $pct } %, coupon out.
verify-opened_no_coupon = Opened at { $at } to { $pct } %, coupon not found.
verify-photos = Photos
verify-of = { $n } of { $of }
verify-site = Site
verify-if_asked = where it is asked
verify-note = Write a note
verify-photo = Keep another photo
verify-photos_all = Save the record so far, { $n ->
    [one] 1 photo
   *[other] { $n } photos
  }
verify-record_so_far = every entry with its hash
verify-stop = end this attempt, or say what happened
verified-cured = Full cure since { $at }
verified-cure_from = Full cure from { $at }
verified-cure_tape = { $gone } of { $all } gone
verified-joined = joined { $at }
verified-target_pressure = at pressure { $at }
verified-reached = reached
verified-to_go = { $span } to go
verified-fold = fold, { $n }
verified-fold_at = fold, { $n }, { $hour } h
verified-lift = stands off
verified-lateral = lateral, { $hour } h, covered
verified-lateral_open = lateral, { $hour } h, opened
verified-drawing = Patch from { $from } to { $to } with what was found
verified-caption = As found. Widths to scale, heights are not.
review-title =
  { $n ->
    [0] Nothing
    [1] One thing
    [2] Two things
    [3] Three things
    [4] Four things
    [5] Five things
    [6] Six things
    [7] Seven things
    [8] Eight things
    [9] Nine things
    [10] Ten things
   *[other] { $n } things
  } went off the plan{ $open ->
    [0] {""}
    [one] , one asks for you
    [2] , two ask for you
    [3] , three ask for you
   *[other] , { $open } ask for you
  }
review-nothing = Nothing went off the plan
review-nothing_text = Every rule held, every minute was witnessed, nothing was corrected.
review-me = { $name }, { $role }
review-go = To the foreman’s review
review-go_note =
  { $n ->
    [one] 1 departure waits
   *[other] { $n } departures wait
  }
review-doubtful = This attempt is doubtful.
review-doubtful_text = The patch may have lost the wall. Look at the photos of the full turn before you decide.
review-doubt = makes it doubtful
review-line = Time line of { $n ->
    [one] the attempt
   *[other] { $n } attempts
  } with { $marks ->
    [one] 1 mark
   *[other] { $marks } marks
  }
review-caption = Departures, corrections, gaps and attempts
review-mark = Mark
review-what = What
review-evidence = Evidence
review-decision = Decision
review-decision_on = Decision on { $what }
review-yes = Accept
review-no = Don’t accept
review-reason = Reason, printed
review-found = found by the rule
review-printed = Printed.
review-both_printed = Old and new are printed.
review-gap_printed = Printed. { $counted } of { $of } min without it.
review-outside_printed = Printed. Minutes beside it not counted.
review-said = { $who } accepted at { $at }: “{ $why }”
review-never = Can’t be waived.
review-decide = Decide on { $which }
review-accept_one = Accept { $n }
review-accept_one_note = by the foreman, with the reason
review-reject = Or reject it
review-reject_why = What is wrong with it
review-reject_act = Reject this attempt
review-reject_note = the patch stays on record as rejected
review-back = Back
review-to_verification = Back to the verification
review-accept = Accept the repair
review-accept_note =
  { $n ->
    [0] by the foreman
    [one] by the foreman, with 1 departure
   *[other] by the foreman, with { $n } departures
  }
review-correct = Correct a value
review-signs = To the signatures
review-signs_note = technician and foreman
review-again = What went off the plan
review-again_note = as it was reviewed
correct-title = Correct a value
correct-reading = Reading { $n }
correct-gauge = Pressure
correct-pipe = Pipe wall
correct-water = Water
correct-was = recorded: { $n }
correct-why = Why it was wrong
correct-kept = Old and new stay.
correct-kept_text = A correction names what it corrects, the old value, the new one and the reason. All of it is printed.
correct-nothing = nothing is changed
correct-act = Record the correction
off-attempt = Attempt { $n }.
off-accepted = Accepted by the foreman
off-rejected = Attempt rejected
off-discarded = Attempt discarded
off-left_in_pipe = Patch left in the pipe
off-abandoned = Attempt abandoned
off-correction = Correction
off-at = at { $at }
off-gap = Not witnessed
off-gap_text = { $span } of the hold, { $from } – { $to }. Not counted.
off-outside = Out of the window
off-outside_text = { $span } of the hold, { $from } – { $to }. Not counted.
off-late = Filled in later
off-late_text =
  { $n ->
    [one] 1 answer
   *[other] { $n } answers
  } after the stage was over.
off-which = Which
off-clock = Clock was set
off-clock_text = By { $by } at { $at }.
off-clock_restarted = By { $by } at { $at }, while the device was off.
signs-title = Two sign
signs-of = { $n } of { $of }
signs-who = { $name }, { $role }
signs-hold = { $counted } of { $of } min
signs-photos = Photos
signs-photos_n =
  { $n ->
    [0] none
   *[other] { $n }, each with its hash
  }
signs-means = Who signs has read { $n ->
    [0] this record
    [one] this one thing
   *[other] these { $n } things
  } and answers for it. A later change voids the signature. The owner’s acceptance is another act.
signed-title = What is signed
signed-departures = Departures
signed-no_departure = None.
signed-all = And all else on the record: { $n } entries, each chained to the one before.
sign-next = Next signs: the { $role }.
sign-next_text = Each signs with their own name. Pick it first.
sign-honest = What a drawn line proves:
sign-honest_text = nothing about who drew it. Once it is issued, your key signs the PDF. Without a key, a change is not noticed.
sign-pick = Pick the { $role }
sign-now = { $name } is picked now
sign-to_certificate = To the certificate
sign-issued = The certificate is issued. Nothing more is signed.
sign-not_yet = It is signed after the foreman has accepted or rejected the repair, or closed it.
sign-back = Back to the repair
sign-back_note = what is next there
certificate-none = Not yet issued
certificate-issued = Issued
certificate-pdf_note = PDF, to be printed and archived
certificate-means = Accepted by the foreman.
certificate-means_text = The owner’s acceptance is another act. Keep the record beside the PDF: it can be checked by anybody.
certificate-not_mended = The defect is not mended.
certificate-not_mended_text = The record says what was tried and why it ended. Keep it beside the PDF: it can be checked by anybody.
certificate-rehearsal = A rehearsal.
certificate-rehearsal_text = It proves nothing about a pipe. File it apart from certificates.
done-sign = Sign
done-issued = Certificate
ending-rejected = Record: rejected
ending-unrepaired = Record: not mended
ending-null = Certificate
done-reason = Why no patch
done-signed = { $at }, drawn, not authenticated
done-signed_pin = { $at }, drawn, with PIN
done-not_signed = has not signed
done-draw = { $role }: draw your line
done-as = as { $name }, { $role }
done-pad = Field for the drawn signature
done-again = Draw again
done-sign_act = Sign
done-issue = Issue the certificate
done-issue_note = gives it its number
done-issue_record = Issue the record
done-pdf = Save the certificate
done-pdf_record = Save the record as PDF
done-record = Save the record
done-record_note = every entry with its hash, to be checked by anybody
done-today = Back to today
statement-technician = I did this repair, recorded it as it happened, and read the values marked H.
statement-foreman_rejected = I have reviewed this record. I do not accept this repair.
statement-foreman_unrepaired = I have reviewed this record. The defect is not mended.
statement-foreman = I have reviewed this record, I answer for the departures named, and I issue this certificate for the contractor.
check-stays = nothing leaves this device
check-file = Certificate or record
check-other = Another certificate or record
check-what = The certificate as PDF, or the record that was saved beside it.
check-act = Check it
check-act_note = without a network
check-valid = Unchanged since it was written
check-valid_lead = {""}
check-changed = Changed, or not complete
check-changed_lead = Do not rely on this file. Ask the contractor for the complete one.
check-photo_lead = The file itself was not changed. Ask for the photo as it was taken.
check-unreadable = Not a record
check-unreadable_lead = {""}
check-rehearsal = A sound rehearsal, not a record
check-rehearsal_lead = No repair was made; it proves nothing about a pipe.
check-chain = Chain of { $n ->
    [one] 1 entry
   *[other] { $n } entries
  }
check-breaks = entry { $n } does not fit
check-looked = What was checked
looked-chain = Chain is whole
looked-chain_wrong = Chain is broken
looked-chain_note =
  { $n ->
    [0] an entry does not follow from the one before, or its text is not the one that was written
   *[other] { $n } entries, head { $head }
  }
looked-head = Head belongs to the last entry
looked-head_wrong = Entries are missing at the end
looked-head_note = compare it with the head printed on the certificate: a cut or a rewrite of the whole shows only there
looked-top = Number and kind are those of the entries
looked-top_wrong = Top and entries disagree
looked-top_note = a rehearsal can’t be passed off as a record
looked-complete = Complete, with its certificate
looked-complete_wrong = Not complete
looked-complete_note = accepted and issued, or closed without a patch
looked-signatures = Both have drawn their line
looked-signatures_wrong = A signature is missing
looked-signatures_note = a line proves nothing about who drew it
looked-file = Unchanged since it was signed
looked-file_wrong = Changed, or no key has signed it
looked-file_note = every byte is covered by a key; nothing was added after the last
looked-keys = Both keys have signed
looked-keys_wrong = A key is missing, unknown, revoked or made for practice
looked-keys_note = when it was made is what the signer’s clock said
looked-pages = Pages say what the record inside says
looked-pages_wrong = Pages and record disagree
looked-pages_note = head of the chain, numbers, pipe, nodes, who signed
looked-originals = No original photo was changed
looked-originals_wrong = An original photo was changed
looked-originals_note = of those that were brought; a missing one says nothing
check-keys = Who signed
check-holds = The signature holds.
check-broken = The signature does not hold.
check-trust_not_asked = No key is known here to compare it with.
check-trust_trusted = The key is in the list of people.
check-trust_unknown = The key is none of the list of people.
check-trust_rehearsal = A key made for practice.
check-revoked = Revoked from { $at }.
check-superseded = Replaced by { $number }
check-superseded_text = Ask the contractor for that one.
seal-title = Keys
seal-signed = { $at }, by key
seal-open = the key has not signed yet
seal-done = Both keys have signed.
seal-done_text = Any change to the PDF from now on is found by everybody who checks it.
seal-rehearsal = Keys are made for this practice and thrown away.
seal-turn = Next comes the key of { $name }.
seal-turn_text = Hand over the device, or pick the name.
seal-no_key = { $name } has no key.
seal-no_key_text = Make one in the list of people. Without it, the PDF is not protected against change.
seal-act = Sign with my key
seal-act_rehearsal = Sign with practice keys
check-says = What it says
check-repair = Repair
check-attempt = Attempt
check-attempt_of = { $n }, { $how }
check-none = none
check-head = Head
check-certificate = Certificate
check-proves = The chain proves that nothing was changed since it was written, as long as the head is the one on the certificate. It does not prove who wrote it. Accepted by the foreman; the owner’s acceptance is another act.
