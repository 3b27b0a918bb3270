### What travels between devices: branches, bundles, hand-over, backup.

apart-title = Two devices, one repair
apart-way = { $n } devices went on with this repair
apart-way_note = This one shows its own. The foreman chooses which counts.
apart-none = All devices agree
apart-none_text = There is one way in which this repair went on. Nothing is to be chosen.
apart-same = The same on all
apart-same_text =
  { $n ->
    [one] 1 entry, the opening, is the same.
   *[other] { $n } entries are the same.
  }
apart-same_until = The last of them is of { $at }.
apart-kept = Nothing is lost: what is not chosen stays in the record and is printed as set aside.
apart-own = This device
apart-other = Another device
apart-device = device { $id }
apart-count =
  { $n ->
    [one] 1 more thing
   *[other] { $n } more things
  }
apart-earlier =
  { $n ->
    [one] 1 earlier thing
   *[other] { $n } earlier things
  }
apart-nobody = nobody picked
apart-choose = Which of them counts?
apart-pick = { $who }, until { $at }
apart-reason = Reason
apart-act = Let the picked one count
apart-act_note = recorded with reason and name
apart-step-opened = Opened: { $detail }
apart-step-plan_accepted = Plan accepted
apart-step-attempt_begun = Attempt { $detail } begun
apart-step-stage_begun = Stage: { $detail }
apart-step-answered = Answered: { $detail }
apart-step-go = Go
apart-step-happened = Reported: { $detail }
apart-step-doubted = Doubtful: { $detail }
apart-step-broke = Broken: { $detail }
apart-step-waived = Waived: { $detail }
apart-step-corrected = Corrected: { $detail }
apart-step-worked_out = A check was worked out
apart-step-noted = Note: { $detail }
apart-step-photo_kept = Photo: { $detail }
apart-step-clock_set = Clock was set by { $detail }
apart-step-attempt_ended = Attempt ended: { $detail }
apart-step-unrepaired = Closed without a patch: { $detail }
apart-step-signed = Signed: { $detail }
apart-step-issued = Certificate { $detail }
apart-step-sealed = Key signed: { $detail }
apart-step-branch_chosen = Chosen: { $detail }
apart-step-voided = Certificate voided: { $detail }
