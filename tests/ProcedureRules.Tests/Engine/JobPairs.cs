using ProcedureRules.Asking;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Engine;

/// <summary>The job of a shipped work order, and every other job that its vehicle has the parts for.</summary>
internal sealed class JobPairs
{
    private readonly Situation _situation;
    private readonly Dictionary<JobRequest, Plan> _alone = [];

    private JobPairs(Situation situation)
    {
        _situation = situation;
        Own = _situation.Jobs[0];
        Others =
        [
            .. from job in Shipped.Engine.Vocabulary.Jobs.Values
               orderby job.Name
               from part in _situation.Parts
               where job.On is { } kind ? part.Kind.IsA(kind) : part.Kind.Name == "vehicle"
               let other = new JobRequest(job, part)
               where other != Own
               select other,
        ];
    }

    /// <summary>Those of an order; null where it has several jobs already.</summary>
    public static JobPairs? Of(string order) => Shipped.Open(order).Situation is { Jobs.Count: 1 } situation ? new JobPairs(situation) : null;

    public JobRequest Own { get; }

    public IReadOnlyList<JobRequest> Others { get; }

    /// <summary>A session on the vehicle with other jobs than its own.</summary>
    public ProcedureSession Open(params JobRequest[] jobs)
    {
        var opened = Shipped.Engine.Open(_situation with { Jobs = jobs });
        Assert.True(opened.Session is not null, string.Concat(opened.Diagnostics));
        return opened.Session;
    }

    /// <summary>The plan of one job, planned once.</summary>
    public Plan Alone(JobRequest job)
    {
        if (!_alone.TryGetValue(job, out var plan)) _alone[job] = plan = Shipped.PlanOf(Open(job));
        return plan;
    }

    /// <summary>
    /// The work that a job by itself leaves to who answers its questions, and that is a step where another job leads there: a plan without a step has
    /// no place for it.
    /// </summary>
    public static Quantity LeftToFindOut(Plan alone, Plan together)
    {
        var work = new FindingWork(alone.Beliefs);
        return (from question in alone.Questions
                where question.AtStep is null
                let reading = question.About as Reading.OfFact
                where reading is not null && together.Questions.Any(asked => asked.Id == question.Id && asked.AtStep is not null)
                group reading by (reading.Key.Part, reading.Key.Fact.FindOperation) into found
                select work.Of(found.First()).Labour).Aggregate(Quantity.Point(0, Dimension.Duration), (sum, labour) => sum + labour);
    }
}
