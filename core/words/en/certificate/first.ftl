### The certificate: the first page, and what every page carries.

## derive/answers.rs

cert-answers-accepted = ACCEPTED
cert-answers-rejected = REJECTED
cert-answers-rehearsal = REHEARSAL
cert-answers-unrepaired = UNREPAIRED
cert-answers-by_the_foreman = by the foreman
cert-answers-practice_patch_accepted = practice patch accepted
cert-answers-practice_patch_rejected = practice patch rejected
cert-answers-practice_patch_left_in_the = practice patch left in the pipe
cert-answers-closed_without_a_practice_patch = closed without a practice patch
cert-answers-no_sewer_was_repaired = no sewer was repaired; { $how }
cert-answers-closed_by_the_foreman_a = closed by the foreman, a patch was left in the pipe
cert-answers-a_patch_was_left_in = a patch was left in the pipe, not closed
cert-answers-closed_by_the_foreman_without = closed by the foreman without a patch
cert-answers-nothing_waived = Nothing waived
cert-answers-off_the_rules = Off the rules
cert-answers-why_rejected = Why rejected
cert-answers-why_unrepaired = Why unrepaired
cert-answers-what_this_is = What this is
cert-answers-practice_it_can_never_become = Practice. It can never become a certificate.
cert-answers-the_record_is_marked_as = The record is marked as a rehearsal from its first entry and is numbered apart. { $also }
cert-answers-no_reason_was_written = no reason was written
cert-answers-of_the_hold_not_witnessed = { $time } of the hold not witnessed
cert-answers-nothing_else_on_the_record = Nothing else on the record
cert-answers-also_on_the_record = Also on the record: { $list }
cert-answers-pipe_without_a_key_of = pipe without a key of the owner
cert-answers-of_unknown_material = of unknown material
cert-answers-what_it_carries_is_not = what it carries is not recorded
cert-answers-which_pipe = Which pipe
cert-answers-between_node_centres_flows_to = { $pipe }, { $carries }, { $length } between node centres, flows to { $to }
cert-answers-street_not_recorded = Street not recorded
cert-answers-patch_centre = Patch centre
cert-answers-defect_centre = Defect centre
cert-answers-from_upstream_from_downstream = { $what } { $at } from { $upstream } (upstream) = { $rest } from { $downstream } (downstream)
cert-answers-where = Where
cert-answers-what_was_mended = What was mended
cert-answers-what_was_tried = What was tried
cert-answers-what_was_practised = What was practised
cert-answers-what_is_not_mended = What is not mended
cert-answers-defect = Defect { $extent }
cert-answers-patch_long_all_round_both = patch { $length } long, all round, { $lies }, both from { $upstream }
cert-answers-from = from { $upstream }; { $why }
cert-answers-also = also { $what }, { $around }, { $at }
cert-answers-looking_downstream = { $around } looking downstream
cert-answers-clock_position_not_recorded = clock position not recorded
cert-answers-each_by_pin = Each by PIN.
cert-answers-not_authenticated = Not authenticated.
cert-answers-who_signs = Who signs
cert-answers-practice_signatures_only = Practice signatures only
cert-answers-with_technician_for = With { $name }, technician, for { $firm }
cert-answers-no_technician_has_signed_for = No technician has signed, for { $firm }
cert-answers-the_owner_accepts_separately = { $technician }. { $known } The owner accepts separately.

## derive/attempts.rs

cert-attempts-not_begun = not begun
cert-attempts-not_ended = not ended
cert-attempts-the_parts_were_never_joined = The parts were never joined.
cert-attempts-working_time_over = , working time over { $at }
cert-attempts-target_pressure = , target pressure { $at }
cert-attempts-parts_joined = Parts joined { $at }{ $over }{ $target }.
cert-attempts-not_recorded = not recorded
cert-attempts-of_resin_as_planned = { $mass } of resin as planned
cert-attempts-of_resin = { $mass } of resin
cert-attempts-patch_lot_and_lots_thrown = Patch (lot { $patch }) and { $resin } (lots { $a }, { $b }) thrown away.
cert-attempts-the_resin = the resin
cert-attempts-on_the_table_not_yet = On the table, not yet in the pipe
cert-attempts-in_the_pipe_not_expanded = In the pipe, not expanded
cert-attempts-touching_the_wall = Touching the wall
cert-attempts-stuck = Stuck
cert-attempts-not_asked_the_parts_were = Not asked: the parts were not joined
cert-attempts-nobody_said = Nobody said
cert-attempts-not_ended_2 = Not ended
cert-attempts-attempt = {" "}(attempt { $n })

## derive/cautions.rs

cert-cautions-not_a_design = Not a design
cert-cautions-wall_thickness_and_pressure_figures = Wall thickness and pressure figures are checks for a licensed engineer, not a structural design.
cert-cautions-not_a_product_test = Not a product test
cert-cautions-it_does_not_say_that = It does not say that resin, patch or packer suit this pipe. That is the data sheet’s and the maker’s word.
cert-cautions-not_an_acceptance = Not an acceptance
cert-cautions-the_owner_accepts_by_a = The owner accepts by a separate act. A result here is the contractor’s own, against the limits printed here.
cert-cautions-hand_readings = Hand readings
cert-cautions-are_statements_of_the_person = are statements of the person named. Minutes nobody saw are not counted and are shown.
cert-cautions-before_going_near = Before going near
cert-cautions-confined_space_traffic_compressed_air = Confined space, traffic, compressed air, uncured or hot resin, styrene and sewage can kill. Permit, data sheet, safety data sheet, local codes and licensed practice decide.
cert-cautions-to_check_this_file = To check this file
cert-cautions-the_record = The record
cert-cautions-to_keep_it = To keep it
cert-cautions-each_who_signed_opened_a = Each who signed opened a key of their own with a PIN. Whose key it is, the owner learns from the contractor, not from this page.
cert-cautions-whose_key = Whose key
cert-cautions-names_were_picked_from_a = Names were picked from a list; no PIN and no key says who held the device. A drawn line alone proves nothing.
cert-cautions-not_authenticated = Not authenticated
cert-cautions-not_a_repair = Not a repair
cert-cautions-nothing_was_mended_the_pipe = Nothing was mended. The pipe is a practice pipe.
cert-cautions-not_a_length = Not a length
cert-cautions-of_was_mended_the_rest = { $mended } of { $all } was mended. The rest of the line is as it was.
cert-cautions-a_patch_lies_in_the = A patch lies in the pipe; the defect is not mended.
cert-cautions-the_defect_is_not_mended = The defect is not mended: { $why }.
cert-cautions-mendline_verify_file_answers_3 = “mendline verify FILE” answers 3 for a sound rehearsal that its keys signed: not a record.
cert-cautions-mendline_verify_file_tells_whether = “mendline verify FILE” tells whether a key signed it and whether it was changed, no network needed.
cert-cautions-it_may_be_kept_for = It may be kept for training, apart from the records of repairs.
cert-cautions-keep_the_pdf_whole_and = Keep the PDF whole, and beside it the original photos, which the contractor hands over. A print is a copy; its head still names the record.
cert-cautions-lies_whole_inside_this_file = lies whole inside this file as record.json: every entry as it was hashed. Any PDF reader saves it.
cert-cautions-is_not_inside_this_file = is not inside this file: contract { $contract } refuses attachments. The contractor hands it over beside it.

## derive/departures.rs

cert-departures-entered_by = , entered by { $name }
cert-departures-waived_by_foreman = Waived by { $foreman }, foreman, { $at }{ $by }.
cert-departures-contract = contract { $clause }

## derive/identity.rs

cert-identity-no_key = no key
cert-identity-owner = Owner
cert-identity-contract = Contract
cert-identity-contractor = Contractor
cert-identity-repair = Repair
cert-identity-inspection = Inspection
cert-identity-working_time = Working time
cert-identity-position = Position
cert-identity-measured_id = Measured ID
cert-identity-video = Video
cert-identity-hold = Hold
cert-identity-full_cure = Full cure
cert-identity-without_a_number = without a number
cert-identity-no_attempt = no attempt
cert-identity-attempt_of = attempt { $n } of { $count }
cert-identity-none_read_in_the_defect = none read in: the defect was entered by hand
cert-identity-without_a_date = without a date
cert-identity-used_of = { $used } used of { $allowed }
cert-identity-target_pressure_never_reached_allowed = target pressure never reached; { $allowed } allowed
cert-identity-none_target_pressure_never_reached = none: target pressure never reached
cert-identity-required_page = { $counted }, { $required } required (page @<{ $page }>)
cert-identity-nominal_dn = { $why }; nominal DN { $dn }
cert-identity-to = , to { $at }
cert-identity-not_said_how = not said how
cert-identity-after_not_recorded = after: not recorded
cert-identity-after_confirmed = after: confirmed { $at }
cert-identity-before = before { $before }; { $after }
cert-identity-its_clock_never_ran = its clock never ran
cert-identity-lateral_cut = lateral cut { $at }
cert-identity-tested = tested { $at }
cert-identity-flow_restored = flow restored { $at }
cert-identity-no_entry = no entry
cert-identity-no_position = no position: { $why }
cert-identity-no_position_the_source_gave = no position: the source gave 0, 0, which is none
cert-identity-the_source_gave_0_0 = the source gave 0, 0, which is none
cert-identity-the_device_was_not_asked = the device was not asked
cert-identity-the_device_may_not_tell = the device may not tell it
cert-identity-the_device_could_not_find = the device could not find it
cert-identity-the_device_had_not_found = the device had not found it yet
cert-identity-accuracy_not_stated = accuracy not stated
cert-identity-receiver = receiver
cert-identity-browser = browser
cert-identity-typed = typed
cert-identity-old_device_at = { $radius }, { $age } old, { $source }, device { $device } at { $at }

## derive/notes.rs

cert-notes-written = Written
cert-notes-devices_had_gone_on_apart = { $of } devices had gone on apart. { $by } chose at { $at } which counts: { $reason } The record keeps both.
cert-notes-chosen = Chosen
cert-notes-this_is_patch_of_a = This is patch { $this } of a series of { $all }: the defect is covered only by all of them, each a repair of its own.
cert-notes-series = Series
cert-notes-excursion = Excursion
cert-notes-a_note_the_attempt_is = { $what } { $net }: a note, the attempt is not doubtful by it. Not counted (page @<{ $page }>).
cert-notes-still_pressed_to_the_wall = Still pressed to the wall
cert-notes-net_stayed_at_or_above = Net { $net } stayed at or above the sheet’s least net { $least_words }
cert-notes-net_fell_below_the_sheets = Net { $net } fell below the sheet’s least net { $least_words }, but after the required hold was reached
cert-notes-the_whole_gap_is_lost = the whole gap is lost
cert-notes-what_is_beyond_interval_and = what is beyond interval and grace is lost
cert-notes-nobody_wrote_why = nobody wrote why
cert-notes-of_the_hold_to_gap = { $time } of the hold, { $from } to { $to }: { $why }. Gap rule: { $lost } ({ $source }; page @<{ $page }>).
cert-notes-not_witnessed = Not witnessed
cert-notes-nobody_said_whether_anything_of = Nobody said whether anything of it is in the pipe.
cert-notes-in_the_pipe = In the pipe: “{ $what }”, { $by }.
cert-notes-page = { $outcome } { $at }: { $why }. { $pipe } (Page @<{ $page }>.)
cert-notes-attempt = Attempt { $n }
cert-notes-back = back
cert-notes-forward = forward
cert-notes-the_device_was_started_anew = The device was started anew in between, so only its wall clock tells how long; nothing of the hold across the restart is counted.
cert-notes-the_clock_since_the_start = The clock since the start of the device ran on: it times the stages and the hold, and no minute was gained or lost.
cert-notes-clock = Clock
cert-notes-the_clock_of_device_was = The clock of device { $device } was set { $way } by { $by }, seen at { $at }. { $then }
cert-notes-correction = Correction
cert-notes-corrected_to_page = { $label }: { $old } corrected to { $new } (page @<{ $page }>).
cert-notes-filled_in_late = Filled in late
cert-notes-after_their_stage = After their stage: { $filled }.
cert-notes-keyed_in = { $what } { $happened } (keyed in { $tapped })
cert-notes-from_paper = From paper
cert-notes-written_on_paper_and_keyed = Written on paper and keyed in by { $by }, both times are kept: { $text }.
cert-notes-a_reading = a reading
cert-notes-tapped_later_by_both_times = { $what } { $happened }, tapped { $late } later by { $by }: both times are kept.
cert-notes-tapped_late = Tapped late
cert-notes-test_push_begun = test push begun
cert-notes-packer_at_the_mark_in = packer at the mark in the test push
cert-notes-packer_back_from_the_test = packer back from the test push
cert-notes-parts_joined = parts joined
cert-notes-insertion_begun = insertion begun
cert-notes-packer_at_the_mark = packer at the mark
cert-notes-air_line_joined = air line joined
cert-notes-target_pressure_reached = target pressure reached
cert-notes-at = { $what } at { $at }
cert-notes-answered_again = Answered again
cert-notes-before_last_by = { $label }: before, { $earlier }; last by { $now }.
cert-notes-the_foremans_decision = {" "}The foreman’s decision: { $label }.
cert-notes-reported = Reported
cert-notes-nobody_recorded_where_round_the = Nobody recorded where round the pipe the defect lies; it is drawn all round.
cert-notes-clock_position = Clock position

## derive/reasons.rs

cert-reasons-no_sewer_was_repaired_and = No sewer was repaired and no owner is concerned. Times, readings and photos on these pages were made in practice.
cert-reasons-not_final = Not final
cert-reasons-a_rehearsal_cant_be_turned = A rehearsal can’t be turned into a certificate. For a repair, a new record is begun.
cert-reasons-not_mended = Not mended
cert-reasons-the_defect_is_not_mended = The defect is not mended. Nobody may take this record for a certificate.
cert-reasons-voided_by = {" "}Voided by { $name }, { $at }.
cert-reasons-supersedes = Supersedes
cert-reasons-this_paper_takes_the_place = This paper takes the place of { $number } of { $day }, which no longer counts. { $why }{ $by }
cert-reasons-doubtful = Doubtful
cert-reasons-net_fell_below_the_sheets = { $what } Net { $net } fell below the sheet’s least net { $least } before the hold was reached: the attempt is doubtful (page @<{ $page }>).
cert-reasons-recorded_by_the_attempt_is = { $says } Recorded by { $by }: the attempt is doubtful.
cert-reasons-the_foremans_decision = { $what } The foreman’s decision: { $label }.
cert-reasons-below = below
cert-reasons-above = above
cert-reasons-for_and_perhaps_longer = for { $lasted } and perhaps longer
cert-reasons-for_at_most = for at most { $lasted }
cert-reasons-at_the_window_resin_old = { $pressure } at { $at }, { $depth } { $side } the window, { $lasted }, resin { $age } old: { $why }
cert-reasons-attempt = Attempt { $n }, { $by }.
cert-reasons-in_the_pipe = In the pipe: “{ $what }”.
cert-reasons-accepted = Accepted
cert-reasons-rejected = Rejected
cert-reasons-discarded = Discarded
cert-reasons-left_in_pipe = Left in pipe
cert-reasons-abandoned = Abandoned
cert-reasons-closed = Closed
cert-reasons-next = Next
cert-reasons-the_repair_is_not_closed = The repair is not closed: attempt { $n }, or closing it unrepaired with a reason.

## derive/signatures.rs

cert-signatures-nobody_has_put_a_name = nobody has put a name to this record
cert-signatures-practice_signature_drawn_proves_nothing = Practice signature, drawn: proves nothing about a pipe.
cert-signatures-picked_as = { $name }, picked as { $tapped }
cert-signatures-device = device { $device }

## layout/answers.rs

cert-answers-result = Result
cert-answers-a_tick_in_a_black = A tick in a black disc: accepted
cert-answers-a_cross_in_a_white = A cross in a white square: rejected
cert-answers-an_r_in_a_lozenge = An R in a lozenge: rehearsal
cert-answers-a_bar_in_a_white = A bar in a white square: closed unrepaired

## layout/departures.rs

cert-departures-more_notes_each_in_full = More notes, each in full: page @<{ $page }>.
cert-departures-page = page @<{ $page }>
cert-departures-each_with_reason_name_and = Each with reason, name and time: { $page }.
cert-departures-each_in_full = { $names }. Each in full: { $page }.
cert-departures-and_more = and { $count } more
cert-departures-each_in_full_2 = Each in full: { $page }.

## layout/head.rs

cert-head-qr_code_with_what_the = QR code with what the page says: number, repair, result, date, entries and head of the record
cert-head-head_of_the_practice = Head of the practice
cert-head-entries_each_marked_as_a = { $digits }{"\u000A"}{ $entries }, each marked as a rehearsal. No code to scan: this record is not to be looked up.
cert-head-what_it_shows = What it shows
cert-head-that_nothing_changed_since_these = that nothing changed since these rehearsal keys signed it, { $when }. The keys were made for this practice and thrown away; “mendline verify” says: a sound rehearsal, not a record.
cert-head-nothing_no_key_signed_it = nothing: no key signed it, and a drawn line proves nothing.
cert-head-what_it_is_not = What it is not
cert-head-a_record_of_a_repair = a record of a repair. It may be kept for training. Anyone who shows it as proof of a repair is wrong.
cert-head-head_of_the_record = Head of the record
cert-head-the_seal_proves = The seal proves
cert-head-no_change_to_this_file = no change to this file since it was sealed, { $when }, with key { $key } …
cert-head-it_does_not_prove = It does not prove
cert-head-who_held_the_phone_or = who held the phone, or that a hand reading is true. A drawn line alone proves nothing. Whose key it is, the owner learns from the contractor, not from this page.
cert-head-not_sealed_by_a_key = Not sealed by a key
cert-head-a_drawn_line_proves_nothing = A drawn line proves nothing, and this file can be changed without a trace.
cert-head-what_can_be_checked = What can be checked
cert-head-the_head_above_against_the = the head above against the record: it names every entry, but not this page.

## layout/running.rs

cert-running-page_of = page { $page } of { $pages }

## layout/signatures.rs

cert-signatures-not_signed = { $role }, not signed: { $why }
cert-signatures-pin = , PIN
cert-signatures-no_line_drawn = , no line drawn
cert-signatures-line_drawn_by = Line drawn by { $name }
cert-signatures-practice = PRACTICE

## layout/wording.rs

cert-wording-sectional_repair_certificate = Sectional repair certificate
cert-wording-repair_record_rejected = Repair record – rejected
cert-wording-rehearsal_record_not_a_certificate = Rehearsal record – not a certificate
cert-wording-repair_record_closed_unrepaired = Repair record – closed unrepaired
cert-wording-departures_and_what_else_went = Departures and what else went off the rules
cert-wording-why_rejected_and_what_went = Why rejected, and what went off the rules
cert-wording-what_was_practised_and_what = What was practised and what it does not show
cert-wording-why_closed_unrepaired_and_what = Why closed unrepaired, and what went off the rules
cert-wording-practice_signatures = Practice signatures
cert-wording-signatures = Signatures
cert-wording-cautions_and_what_this_certificate = Cautions, and what this certificate is not
cert-wording-cautions_and_what_this_record = Cautions, and what this record is not
cert-wording-end_of_the_certificate = End of the certificate
cert-wording-end_of_the_record = End of the record
cert-wording-rehearsal_practice_not_a_certificate = REHEARSAL. Practice, not a certificate.
cert-wording-the_sealed_pdf_is_the = The sealed PDF is the original; a print is a copy.
cert-wording-not_sealed_by_a_key = Not sealed by a key: see page 1.

## More

cert-count-departures = { $count ->
    [one] { $count } departure
   *[other] { $count } departures
  }
cert-count-doubts = { $count ->
    [one] { $count } doubt
   *[other] { $count } doubts
  }
cert-count-attempts = { $count ->
    [one] { $count } other attempt
   *[other] { $count } other attempts
  }
cert-count-corrections = { $count ->
    [one] { $count } correction
   *[other] { $count } corrections
  }
cert-count-excursions = { $count ->
    [one] { $count } pressure excursion
   *[other] { $count } pressure excursions
  }
cert-count-clock_changes = { $count ->
    [one] { $count } clock change
   *[other] { $count } clock changes
  }
cert-answers-with_departures = with { $count ->
    [one] { $count } departure
   *[other] { $count } departures
  }
cert-answers-outside = by the foreman, { $count ->
    [one] { $count } finding
   *[other] { $count } findings
  } outside the limits
cert-signatures-technician = Technician
cert-signatures-foreman = Foreman
cert-signatures-no_technician = No technician
cert-signatures-no_foreman = No foreman
cert-signatures-no_technician_signed = no technician has signed
cert-signatures-no_foreman_signed = no foreman has signed
cert-departures-value_not_kept = (value not kept)
cert-departures-articles = the a an
cert-identity-north = N
cert-identity-south = S
cert-identity-east = E
cert-identity-west = W
cert-head-entries = { $entries } entries
cert-head-chain = { $digits }{"\u000A"}{ $entries }, SHA-256, each entry holds the one before.
cert-head-chain_and_code = { $digits }{"\u000A"}{ $entries }, SHA-256, each entry holds the one before. The code holds the same head.
cert-running-record_head = Record head { $hash }   { $made }
cert-heading-stages = The nine stages
cert-heading-working_time = Working time
cert-heading-hold = The hold
cert-heading-materials = Materials, tools and lots
cert-heading-sheets = Values from the data sheets and the contract
cert-heading-checks = Computed checks
cert-heading-findings = Findings of the verification
cert-heading-departures = Departures in full
cert-heading-notes = Notes in full
cert-heading-attempts = Other attempts
cert-heading-corrections = Corrections
cert-heading-photos = Photos
cert-form-technician = Signature of the technician
cert-form-foreman = Signature of the foreman
cert-attachment-description = The record of this repair: every entry of its chain, for programs
cert-running-made_by = { $program }, offline, device { $device }
cert-sealing-key = key { $key }
cert-signatures-quoted = “{ $statement }”
