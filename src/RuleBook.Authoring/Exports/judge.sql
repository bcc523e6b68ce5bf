-- Judges every row of vehicles by the limits in these tables: which pathway, between which pathways where something is not known.
--
-- Fill two tables and run this; nothing else is needed.
--   vehicles: one row a vehicle, its place of registration and the day of the work.
--   stated:   one row a fact that is known of it. A word or a condition ('met', 'not met') in word; a measure from low to high, in the unit that
--             facts names, the same in both where it is known exactly, NULL for an end that is not known; a day as the number yyyymmdd.
-- What is not stated is unknown, but for a measure that then is as the maker built it. Truth is 0 no, 1 unknown, 2 yes; a pathway 0 without a
-- certificate, 1 certificate, 2 approval of the authority, 3 prohibited. Where facts lack, best and worst are never too near to one another.
-- Masses, plans of towing and rules of use are not judged here. This is not legal advice: the authority and the certifier decide.
WITH
judged AS (
  SELECT v.vehicle, r.ruling
  FROM vehicles v
  JOIN rulings r ON r.place = v.place AND v.on_day BETWEEN r.first_day AND r.last_day
),
-- What is known of each quantity: stated, or implied by a word, or as built, or the sum of its parts, which may be sums themselves.
implied_of AS (
  SELECT s.vehicle, i.measure, i.low, i.high
  FROM stated s
  JOIN implied i ON i.fact = s.fact AND i.word = s.word
),
simple AS (
  SELECT j.vehicle, q.ruling, q.quantity, q.measure,
    CASE WHEN s.vehicle IS NOT NULL THEN s.low WHEN i.vehicle IS NOT NULL THEN i.low ELSE q.unchanged END AS low,
    CASE WHEN s.vehicle IS NOT NULL THEN s.high WHEN i.vehicle IS NOT NULL THEN i.high ELSE q.unchanged END AS high
  FROM judged j
  JOIN quantities q ON q.ruling = j.ruling AND q.level = 0
  LEFT JOIN stated s ON s.vehicle = j.vehicle AND s.fact = q.measure
  LEFT JOIN implied_of i ON i.vehicle = j.vehicle AND i.measure = q.measure
),
sums AS (
  SELECT j.vehicle, q.ruling, q.quantity, q.measure,
    CASE WHEN MAX(s.vehicle) IS NOT NULL THEN MAX(s.low) WHEN COUNT(k.low) = COUNT(*) THEN SUM(k.low * p.factor) END AS low,
    CASE WHEN MAX(s.vehicle) IS NOT NULL THEN MAX(s.high) WHEN COUNT(k.high) = COUNT(*) THEN SUM(k.high * p.factor) END AS high
  FROM judged j
  JOIN quantities q ON q.ruling = j.ruling AND q.level = 1
  JOIN parts p ON p.ruling = q.ruling AND p.quantity = q.quantity
  JOIN simple k ON k.vehicle = j.vehicle AND k.quantity = p.part
  LEFT JOIN stated s ON s.vehicle = j.vehicle AND s.fact = q.measure
  GROUP BY j.vehicle, q.ruling, q.quantity, q.measure
),
summed AS (
  SELECT vehicle, ruling, quantity, measure, low, high FROM simple
  UNION ALL
  SELECT vehicle, ruling, quantity, measure, low, high FROM sums
),
totals AS (
  SELECT j.vehicle, q.ruling, q.quantity, q.measure,
    CASE WHEN MAX(s.vehicle) IS NOT NULL THEN MAX(s.low) WHEN COUNT(k.low) = COUNT(*) THEN SUM(k.low * p.factor) END AS low,
    CASE WHEN MAX(s.vehicle) IS NOT NULL THEN MAX(s.high) WHEN COUNT(k.high) = COUNT(*) THEN SUM(k.high * p.factor) END AS high
  FROM judged j
  JOIN quantities q ON q.ruling = j.ruling AND q.level = 2
  JOIN parts p ON p.ruling = q.ruling AND p.quantity = q.quantity
  JOIN summed k ON k.vehicle = j.vehicle AND k.quantity = p.part
  LEFT JOIN stated s ON s.vehicle = j.vehicle AND s.fact = q.measure
  GROUP BY j.vehicle, q.ruling, q.quantity, q.measure
),
known AS (
  SELECT vehicle, ruling, quantity, measure, low, high FROM summed
  UNION ALL
  SELECT vehicle, ruling, quantity, measure, low, high FROM totals
),
-- What the vehicle has changed, and the topics that this touches.
moved AS (
  SELECT k.vehicle, m.ruling, m.measure
  FROM known k
  JOIN movements m ON m.ruling = k.ruling AND m.quantity = k.quantity
  WHERE CASE
    WHEN k.low = m.unchanged AND k.high = m.unchanged THEN 0
    WHEN m.only_known = 1 AND (k.low IS NULL OR k.low < m.first_edge) AND (k.high IS NULL OR k.high > m.last_edge) THEN 0
    ELSE 1 END = 1
),
touched AS (
  SELECT DISTINCT m.vehicle, m.ruling, t.topic
  FROM moved m
  JOIN movement_topics t ON t.ruling = m.ruling AND t.measure = m.measure
),
due AS (
  SELECT t.vehicle, t.ruling, t.topic, n.rule, n.version, n.says, n.beyond
  FROM touched t
  JOIN versions n ON n.ruling = t.ruling AND n.topic = t.topic
),
-- Whether each test of the versions that are due holds; then each tier, which versions bind, what each gives.
truths AS (
  SELECT d.vehicle, x.version, x.tier, x.part,
    CASE
      WHEN x.kind = 'never' THEN 0
      WHEN x.kind = 'not established' THEN 1
      WHEN x.kind = 'condition' THEN CASE WHEN s.word = 'not met' THEN 0 ELSE 2 END
      WHEN x.kind = 'word' THEN CASE WHEN s.word IS NULL THEN x.unstated WHEN w.word IS NULL THEN 0 ELSE 2 END
      WHEN k.high < x.low OR (k.high = x.low AND x.low_closed = 0) THEN 0
      WHEN k.low > x.high OR (k.low = x.high AND x.high_closed = 0) THEN 0
      WHEN (x.low IS NULL OR k.low > x.low OR (k.low = x.low AND x.low_closed = 1))
        AND (x.high IS NULL OR k.high < x.high OR (k.high = x.high AND x.high_closed = 1)) THEN 2
      ELSE 1
    END AS truth
  FROM due d
  JOIN tests x ON x.version = d.version
  LEFT JOIN known k ON k.vehicle = d.vehicle AND k.quantity = x.quantity
  LEFT JOIN stated s ON s.vehicle = d.vehicle AND s.fact = x.fact
  LEFT JOIN test_words w ON w.test = x.test AND w.word = s.word
),
held AS (
  SELECT vehicle, tier, MIN(truth) AS holds, MIN(CASE WHEN part = 'when' THEN truth ELSE 2 END) AS opens
  FROM truths
  WHERE tier IS NOT NULL
  GROUP BY vehicle, tier
),
-- A rule may bind several descriptions of vehicles ('for', 'for 2', ...): one of them has to be met whole.
described AS (
  SELECT vehicle, version, part, MIN(truth) AS meets
  FROM truths
  WHERE tier IS NULL
  GROUP BY vehicle, version, part
),
bound AS (
  SELECT vehicle, version, MAX(meets) AS binds
  FROM described
  GROUP BY vehicle, version
),
tried AS (
  SELECT d.vehicle, d.version, t.step, t.pathway, t.exceeded, COALESCE(h.holds, 2) AS holds, COALESCE(h.opens, 2) AS opens,
    MIN(CASE WHEN COALESCE(h.holds, 2) = 2 THEN t.step END) OVER (PARTITION BY d.vehicle, d.version) AS last_step
  FROM due d
  JOIN tiers t ON t.version = d.version
  LEFT JOIN held h ON h.vehicle = d.vehicle AND h.tier = t.tier
),
reached AS (
  SELECT vehicle, version, MAX(last_step) AS last_step,
    MIN(CASE WHEN holds > 0 THEN pathway END) AS best,
    MAX(CASE WHEN holds > 0 THEN pathway END) AS worst,
    MAX(CASE WHEN holds = 0 AND opens = 2 AND pathway < 3 THEN 10 * step + exceeded END) AS exceeded
  FROM tried
  WHERE last_step IS NULL OR step <= last_step
  GROUP BY vehicle, version
),
given AS (
  SELECT d.vehicle, d.ruling, d.topic, d.rule, d.version, COALESCE(b.binds, 2) AS binds,
    CASE
      WHEN d.says <> 'limits' THEN 0
      WHEN r.last_step IS NOT NULL THEN r.best
      ELSE LEAST(COALESCE(r.best, 3), COALESCE(d.beyond, MOD(r.exceeded, 10), 0))
    END AS best,
    CASE
      WHEN d.says = 'not regulated' THEN 0
      WHEN d.says = 'not established' THEN 3
      WHEN r.last_step IS NOT NULL THEN r.worst
      ELSE GREATEST(COALESCE(r.worst, 0), COALESCE(d.beyond, 3))
    END AS worst
  FROM due d
  LEFT JOIN bound b ON b.vehicle = d.vehicle AND b.version = d.version
  LEFT JOIN reached r ON r.vehicle = d.vehicle AND r.version = d.version
),
-- A rule gives what any version of it that may be in force gives; where it is not known whether it binds, also nothing.
ruled AS (
  SELECT vehicle, ruling, topic, rule, MAX(binds) AS binds, CASE WHEN MAX(binds) = 2 THEN MIN(best) ELSE 0 END AS best, MAX(worst) AS worst
  FROM given
  GROUP BY vehicle, ruling, topic, rule
  HAVING MAX(binds) > 0
),
-- A change that asks for a rule of its own is open on its topic until a rule that binds speaks of it.
spoken AS (
  SELECT DISTINCT r.vehicle, r.topic, s.measure
  FROM ruled r
  JOIN speaks s ON s.ruling = r.ruling AND s.rule = r.rule
  WHERE r.binds = 2
),
unmet AS (
  SELECT DISTINCT m.vehicle, t.topic
  FROM moved m
  JOIN movement_topics t ON t.ruling = m.ruling AND t.measure = m.measure AND t.own_rule = 1
  LEFT JOIN spoken s ON s.vehicle = m.vehicle AND s.topic = t.topic AND s.measure = m.measure
  WHERE s.vehicle IS NULL
),
on_topic AS (
  SELECT t.vehicle, t.topic, COALESCE(MAX(r.best), 0) AS best,
    CASE WHEN COALESCE(MAX(r.binds), 0) < 2 OR MAX(u.topic) IS NOT NULL THEN 3 ELSE MAX(r.worst) END AS worst
  FROM touched t
  LEFT JOIN ruled r ON r.vehicle = t.vehicle AND r.topic = t.topic
  LEFT JOIN unmet u ON u.vehicle = t.vehicle AND u.topic = t.topic
  GROUP BY t.vehicle, t.topic
),
verdicts AS (
  SELECT vehicle, MAX(best) AS best, MAX(worst) AS worst FROM on_topic GROUP BY vehicle
),
-- What is stated and nobody judges: a change that no rule that binds looks at, a fact or a word that is none.
looked_at AS (
  SELECT DISTINCT g.vehicle, l.measure
  FROM given g
  JOIN judges l ON l.version = g.version
  WHERE g.binds > 0
),
left_out AS (
  SELECT m.vehicle, m.measure AS fact
  FROM moved m
  JOIN stated s ON s.vehicle = m.vehicle AND s.fact = m.measure
  LEFT JOIN looked_at l ON l.vehicle = m.vehicle AND l.measure = m.measure
  WHERE l.vehicle IS NULL
  UNION ALL
  SELECT s.vehicle, s.fact
  FROM stated s
  LEFT JOIN facts f ON f.fact = s.fact
  LEFT JOIN words w ON w.fact = s.fact AND w.word = s.word
  WHERE f.fact IS NULL OR (s.word IS NOT NULL AND w.word IS NULL)
),
not_judged AS (
  SELECT vehicle, COUNT(*) AS facts, MIN(fact) AS first_fact FROM left_out GROUP BY vehicle
)
SELECT v.vehicle, v.place, v.on_day,
  CASE
    WHEN j.ruling IS NULL THEN 'no limits for this place and day'
    WHEN d.best IS NULL AND n.facts > 0 THEN 'not judged'
    WHEN d.best IS NULL THEN 'nothing to judge'
    WHEN d.best < d.worst THEN 'undecided'
    ELSE b.name
  END AS verdict,
  b.name AS best,
  w.name AS worst,
  COALESCE(n.facts, 0) AS not_judged,
  n.first_fact AS not_judged_first
FROM vehicles v
LEFT JOIN judged j ON j.vehicle = v.vehicle
LEFT JOIN verdicts d ON d.vehicle = v.vehicle
LEFT JOIN pathways b ON b.pathway = d.best
LEFT JOIN pathways w ON w.pathway = d.worst
LEFT JOIN not_judged n ON n.vehicle = v.vehicle
ORDER BY v.vehicle
