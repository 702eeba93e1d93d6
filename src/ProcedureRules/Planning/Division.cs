using ProcedureRules.Asking;
using ProcedureRules.Beliefs;
using ProcedureRules.Choosing;
using ProcedureRules.Inference;
using ProcedureRules.Plans;

namespace ProcedureRules.Planning;

/// <summary>
/// Steps that one answer brings may be in the way of those that another brings: there is no order for both, and one for each. What divides
/// them is then asked before anything is done.
/// </summary>
internal sealed class Division(Decision decision, Failures failures, ChoiceBook book, PlannerOptions options, CancellationToken cancellation)
{
    // How many questions are tried, and how long a search each of their answers may take.
    private const int MostQuestions = 12;
    private const int MostMoments = 500;

    private readonly PlannerOptions _quick = options with { MostDecisions = 1, MostMoments = Math.Min(options.MostMoments, MostMoments) };

    /// <summary>The question each answer to which has an order, else one of which some answer has; as what stops the job. Null: there is none.</summary>
    public Fault? Find()
    {
        var beliefs = decision.Beliefs;
        var due = beliefs.Network.AtomsOf<Atom.Occurs>().Where(atom => beliefs.Required(atom) >= Assurance.Provisional).Select(atom => atom.Step).ToList();
        Fault? ofSome = null;
        foreach (var inquiry in new Questioner(beliefs, book).AskBefore(due).Take(MostQuestions))
        {
            if (beliefs.Network.Readers(inquiry.About) is not [var reader, ..]) continue;
            var plans = Outcomes.Of(decision.Root, inquiry.About).ToLookup(answer => new Attempt(book, _quick, cancellation, failures).Plan(decision.Root.With([answer])) is not null);
            if (!plans.Contains(true)) continue;
            var question = QuestionWriter.Write(beliefs, inquiry, []).Text;
            var fault = new Fault(new Wording(units => $"No order of the steps fits every answer to this question: {question.In(units)} Find it out first, then plan again."), false, reader);
            if (!plans.Contains(false)) return fault;
            ofSome ??= fault;
        }

        return ofSome;
    }
}
