-- The rules of judging changed: only what lies within a run counts, gaps have no upper bound, insulation is judged by
-- decimals, and what a curve says carries a span. Verdicts are derived; they are judged anew when they are asked for.
TRUNCATE cure.verdict, electrical.verdict;
