### The certificate: the course of the work: stages, working time, hold.

## derive/course.rs

cert-course-parts_joined = parts joined { $at }
cert-course-air_line_joined = air line joined { $at }
cert-course-reached = { $pressure } reached { $at }
cert-course-insertion_begun = insertion begun { $at }
cert-course-reported_after_target_pressure = {" "}(reported after target pressure)
cert-course-by_counter = , { $counter } by counter
cert-course-at_the_mark = at the mark { $at }{ $late }{ $counter }
cert-course-mark_from_the_reading_point = mark { $path } from the reading point
cert-course-on_the_mark = on the mark
cert-course-past_the_mark = { $length } past the mark
cert-course-short_of_the_mark = { $length } short of the mark
cert-course-not_witnessed_hatched = { $lost } not witnessed (hatched)
cert-course-required = { $counted }, { $required } required
cert-course-emergency_release = EMERGENCY RELEASE
cert-course-released = released
cert-course-hard = hard
cert-course-soft = SOFT
cert-course-sample_from_the_manhole = sample from the manhole { $felt } { $at }
cert-course-full_cure = full cure { $at }
cert-course-coupon_out = coupon out
cert-course-coupon_not_out = COUPON NOT OUT
cert-course-lateral_cut = lateral cut { $at }, { $coupon }
cert-course-tightness_test = tightness test { $at }
cert-course-by_counter_2 = {" "}({ $counter } by counter)
cert-course-at_the_mark_not_inflated = at the mark { $at }{ $counted }, not inflated
cert-course-sound = sound
cert-course-not_sound = NOT SOUND
cert-course-back = back { $at }, { $how }

## derive/hold.rs

cert-hold-no_attempt_was_begun = no attempt was begun
cert-hold-the_parts_were_never_joined = the parts were never joined
cert-hold-target_pressure_was_never_reached = target pressure was never reached
cert-hold-the_readings_cant_be_put = the readings can’t be put in order
cert-hold-required_the_longest_of_the = { $required } required, the longest of the sheet: { $at } is colder than its table
cert-hold-required_at_the_coldest = { $required } required at { $at }, the coldest
cert-hold-out_of_window_not_witnessed = { $outside } out of window, { $lost } not witnessed
cert-hold-counted_of_it_from_joining = { $all } counted, { $before } of it from joining to pressure
cert-hold-counted = { $all } counted
cert-hold-the_device_was_started_anew = the device was started anew in between

## derive/said.rs

cert-said-does_not_apply_because = does not apply, because { $because }
cert-said-not_right_because = not right, because { $because }
cert-said-cleaned = cleaned { $at }{ $how }
cert-said-viewed_again = viewed again { $at }{ $found }
cert-said-inside = inside { $range }{ $how }
cert-said-packer_test_held_for_drop = packer test { $pressure }, held for { $time }, drop { $drop }
cert-said-bare_ends_front_rear = bare ends { $front } front, { $rear } rear
cert-said-parts = parts: { $how }{ $a }{ $b }
cert-said-mixed = mixed { $time }
cert-said-seam_at = seam at { $hour }
cert-said-pulled_by_sleeve_membrane_binding = pulled by { $by }; sleeve: { $sleeve }; membrane: { $membrane }; binding: { $binding }
cert-said-to = { $what }: { $mass }, to { $where }{ $ticket }
cert-said-below = below: { $who }
cert-said-somebody_below_nobody_says_who = somebody below, nobody says who
cert-said-nobody_below = nobody below
cert-said-permit = permit { $number }, { $who }

## derive/stages.rs

cert-stages-the_other_attempt_on_page = ; the other attempt on page @<{ $page }>
cert-stages-other_attempts_on_page = ; other attempts on page @<{ $page }>
cert-stages-times_attempt_of = { $date }, times { $offset }, attempt { $n } of { $count }{ $other }
cert-stages-begun_by_the_time_on = begun by the time on paper
cert-stages-no_tap_a_later_stage = no tap: a later stage was reported first
cert-stages-not_reached = not reached
cert-stages-not_known = not known
cert-stages-in_attempt_still_valid = in attempt { $from }, still valid
cert-stages-no_tap_when_it_began = no tap when it began
cert-stages-in_attempt = In attempt { $from }: { $what }
cert-stages-waiting_for_full_cure = waiting for full cure
cert-stages-test_push = test push
cert-stages-valid_from_attempt = Valid from attempt { $n }: { $what }.
cert-stages-pipe_viewed_again = {" "}Pipe viewed again { $at }.
cert-stages-suitability = suitability
cert-stages-permit = permit
cert-stages-flow_control = flow control
cert-stages-measured_id = measured ID
cert-stages-instruments = instruments

## derive/tasks.rs

cert-tasks-from_paper = {" "}(from paper)
cert-tasks-does_not_apply_because = { $label }: does not apply, because { $because }
cert-tasks-not_right_because = { $label }: NOT RIGHT, because { $because }
cert-tasks-the_method_statement = the method statement
cert-tasks-air_read = air read { $times }: { $words }
cert-tasks-temperatures = temperatures { $times }: { $words }
cert-tasks-full_turn_at_both_edges = full turn at both edges { $at }
cert-tasks-waste = waste { $at }

## derive/when.rs

cert-when-no_such_day = no such day
cert-when-no_such_time = no such time
cert-when-nobody_picked = nobody picked
cert-when-not_in_the_list = { $id } (not in the list)
cert-when-from_paper = , from paper

## derive/words.rs

cert-words-all_round = all round
cert-words-at_oclock = at { $hour } o’clock
cert-words-to_oclock = { $from_hour } to { $to_hour } o’clock

## derive/working_time.rs

cert-working_time-no_row_of_the_sheet = no row of the sheet holds
cert-working_time-outside_the_sheet_its_shortest = outside the sheet: its shortest time
cert-working_time-at_the_warmest = at { $temperature } ({ $whose }, the warmest)
cert-working_time-outside_the_sheet_its_shortest_2 = outside the sheet: its shortest time stands in
cert-working_time-late_by = ; LATE by { $time }
cert-working_time-margin = ; margin { $time }
cert-working_time-mixed = mixed
cert-working_time-soaked = soaked
cert-working_time-at_the_mark = at the mark
cert-working_time-air_joined = air joined

## layout/readings.rs

cert-readings-the_only_reading = The only reading
cert-readings-all_readings = All { $count } readings
cert-readings-p_from_paper = , P from paper
cert-readings-h_read_by_hand_s = H read by hand, S sensor{ $paper }; a dash before a reading: the minutes up to it are not counted
cert-readings-to = { $from } to { $to }; { $key }
cert-readings-time = Time
cert-readings-pipe = pipe { $degree }
cert-readings-patch = patch { $degree }
cert-readings-h = H
cert-readings-s = S
cert-readings-p = P
cert-readings-low = low
cert-readings-high = high
cert-readings-gap = gap

## layout/stages.rs

cert-stages-not_on_these_pages = Not on these pages: { $why }.
cert-stages-the_stages = The stages
cert-stages-on = On { $date }. { $note }
cert-stages-not_begun = Not begun: { $why }. { $note }
cert-stages-no_end = No end: { $why }. { $note }
cert-stages-stage_continued = Stage (continued)
cert-stages-stage = Stage
cert-stages-begun = Begun
cert-stages-lasted = Lasted

## layout/working_time.rs

cert-working_time-working_time_used_allowed = Working time: used { $used }, allowed { $allowed }
cert-working_time-not_used = not used
cert-working_time-allowed = allowed

## layout/hold_chart.rs

cert-chart-no_reading_was_taken = no reading was taken
cert-chart-temperature_of_pipe_wall_and = Temperature of pipe wall and patch end in { $degree } against time of day
cert-chart-pressure_in_against_time_of = Pressure in { $unit } against time of day: { $count } readings; window { $lower } to { $upper } { $unit }; { $time } counted
cert-chart-counted = counted

## layout/hold_chart/pressure.rs

cert-pressure-pressure = Pressure, { $unit }
cert-pressure-read_by_hand_sensor_outside = ●  read by hand     □  sensor     ▼  outside the window     hatched: not witnessed
cert-pressure-upper_limit = upper limit
cert-pressure-lower_limit = lower limit
cert-pressure-least_net = least net { $net }
cert-pressure-gauge = = { $value } { $unit } gauge
cert-pressure-not_witnessed = not witnessed
cert-pressure-at = { $value } { $unit } at { $at }

## layout/hold_chart/temperature.rs

cert-temperature-temperature = Temperature, { $degree }
cert-temperature-not_read = not read
cert-temperature-patch_end = ◆ patch end
cert-temperature-pipe_wall = ○ pipe wall

## More

cert-course-go = go { $at } at { $temperature }, { $spare } to spare
cert-course-second_go = second go { $at } at { $temperature }, { $spare } to spare
cert-count-rods = { $count ->
    [one] { $count } rod
   *[other] { $count } rods
  }
cert-count-readings = { $count ->
    [one] { $count } reading
   *[other] { $count } readings
  }
cert-hold-counted_bare = { $all }, { $before } of it from joining to pressure
cert-said-ticket = , ticket{" "}
cert-count-plugs_out = { $count ->
    [one] { $count } plug taken out
   *[other] { $count } plugs taken out
  }
cert-tasks-confirmed = { $count ->
    [one] { $count } more task
   *[other] { $count } more tasks
  } of { $method } confirmed
cert-working_time-used = used { $used } of { $allowed } allowed { $by }{ $margin }
cert-working_time-never_reached = target pressure was never reached; { $allowed } allowed { $by }{ $margin }
