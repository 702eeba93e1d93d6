using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>
/// Finds what would tell rival causes apart: every open reading behind a finding on one of them is supposed answered in each way, and what
/// changes a verdict is shown, the least work first, then what leaves the fewest rivals.
/// </summary>
internal sealed class TellingChecks(BeliefState beliefs)
{
    private const int Most = 5;
    private readonly FindingWork _work = new(beliefs);
    private readonly Openness _openness = new(beliefs);
    private readonly Prohibitions _prohibitions = new(beliefs);

    public static IReadOnlyList<PlanTellingCheck> Of(BeliefState beliefs)
    {
        var rivals = Verdict.Under(beliefs).Where(verdict => verdict.Truth == Truth.Unknown).Select(verdict => (verdict.Cause, verdict.Part)).ToHashSet();
        return rivals.Count == 0 ? [] : new TellingChecks(beliefs).Of(rivals);
    }

    private IReadOnlyList<PlanTellingCheck> Of(HashSet<(Cause, Part)> rivals) =>
    [
        .. Readings(rivals)
            .Select(reading => (Reading: reading, Answers: Answers(reading, rivals)))
            .Where(entry => entry.Answers.Exists(answer => answer.Changes))
            .Select(entry => (Check: Write(entry.Reading, entry.Answers), Left: entry.Answers.Average(answer => answer.Left)))
            .OrderBy(entry => Math.Round(entry.Check.Labour.High / 60)).ThenBy(entry => entry.Left).ThenBy(entry => entry.Check.Id, StringComparer.Ordinal)
            .Select(entry => entry.Check)
            .Take(Most),
    ];

    private IReadOnlyList<Reading> Readings(HashSet<(Cause, Part)> rivals)
    {
        var open = new List<Reading>();
        foreach (var source in beliefs.Network.RecordsWith<Conclusion.Finding>())
        {
            var (record, finding) = (source.Record, (Conclusion.Finding)source.Effect.Conclusion!);
            if (!rivals.Contains((finding.Cause, record.Binding.Part(finding.Slot)))) continue;
            if (beliefs.Available(record, source.Index) is not (Assurance.No or Assurance.Sure)) open.AddRange(_openness.Behind(beliefs.Network.ReadingsOf(record)));
        }

        // What may not be done now is no way to find out.
        return [.. open.Distinct().Where(reading => QuestionWriter.FindingOut(beliefs, reading) is not { } check || _prohibitions.Of(check) is null)];
    }

    private List<(TellingAnswer Answer, bool Changes, int Left)> Answers(Reading reading, HashSet<(Cause, Part)> rivals)
    {
        var answers = new List<(TellingAnswer, bool, int)>();
        foreach (var (outcome, text) in Outcomes.Sampled(beliefs, reading))
        {
            var there = Verdict.Under(beliefs.With([outcome])).Where(verdict => rivals.Contains((verdict.Cause, verdict.Part))).ToLookup(verdict => verdict.Truth);
            var answer = new TellingAnswer(text, Texts(there[Truth.Yes]), Texts(there[Truth.No]));
            var left = answer.Confirms.Count > 0 ? answer.Confirms.Count : rivals.Count - answer.RulesOut.Count;
            answers.Add((answer, answer.Confirms.Count + answer.RulesOut.Count > 0, left));
        }

        return answers;
    }

    private List<Wording> Texts(IEnumerable<Verdict> verdicts) => [.. verdicts.Select(verdict => FindingList.Text(beliefs, verdict.Cause, verdict.Part))];

    private PlanTellingCheck Write(Reading reading, List<(TellingAnswer Answer, bool Changes, int Left)> answers)
    {
        var (labour, before) = _work.Of(reading);
        var (text, how) = QuestionWriter.Put(beliefs, reading);
        return new PlanTellingCheck(
            QuestionWriter.IdOf(reading), reading, text, how, labour,
            [.. before.Select(step => Words.Instruction(beliefs, step))],
            [.. answers.Where(answer => answer.Changes).Select(answer => answer.Answer)]);
    }
}
