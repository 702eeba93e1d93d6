using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Asking;

/// <summary>Asks for what is not known and matters to one set of choices. It keeps what it has found of each step: a plan in the making asks more than once. Not for several threads at once.</summary>
internal sealed class Questioner(BeliefState beliefs, ChoiceBook book)
{
    private readonly Dictionary<Step, IReadOnlyList<Matter>> _ofSteps = [];

    /// <summary>What things that are only possible hang on.</summary>
    public Settling Settling { get; } = new(beliefs);

    /// <summary>What asks to be held until more is known.</summary>
    public IReadOnlyList<RecordEffect> Held => field ??= HoldFinder.Roots(beliefs);

    private IReadOnlyList<Matter> OfTheWhole => field ??= MatterFinder.OfTheWhole(beliefs, Settling, book, Held);

    /// <summary>What is asked for the steps of a plan and its choices.</summary>
    public IReadOnlyList<Inquiry> Ask(IReadOnlyList<Step> steps) => Ask(steps, new Together(steps).Has);

    /// <summary>What is asked before it is settled which steps come in with the moments of a plan.</summary>
    public IReadOnlyList<Inquiry> AskBefore(IReadOnlyList<Step> steps) => Ask(steps, Together.OrServing(beliefs, steps));

    private IReadOnlyList<Inquiry> Ask(IReadOnlyList<Step> steps, Func<Record, bool> counts)
    {
        var inquiries = new Dictionary<Reading, Inquiry>();
        foreach (var matter in steps.SelectMany(OfStep).Concat(OfTheWhole))
            if (matter.Rests is not { } record || counts(record))
                foreach (var key in matter.Open)
                {
                    if (!inquiries.TryGetValue(key, out var inquiry)) inquiries[key] = inquiry = new Inquiry(key);
                    inquiry.Add(matter);
                }

        return [.. inquiries.Values
            .OrderBy(inquiry => inquiry.Urgency).ThenByDescending(inquiry => inquiry.Steps.Count)
            .ThenBy(inquiry => QuestionWriter.IdOf(inquiry.About), StringComparer.Ordinal)];
    }

    private IReadOnlyList<Matter> OfStep(Step step)
    {
        if (!_ofSteps.TryGetValue(step, out var matters)) _ofSteps[step] = matters = MatterFinder.Of(beliefs, Settling, step);
        return matters;
    }
}
