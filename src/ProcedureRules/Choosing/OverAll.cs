using ProcedureRules.Beliefs;
using ProcedureRules.Language;

namespace ProcedureRules.Choosing;

/// <summary>The effects that are about the whole job and not about one of its steps.</summary>
internal static class OverAll
{
    public static IEnumerable<RecordEffect> Of(BeliefState beliefs)
    {
        var network = beliefs.Network;
        return Stops.Binding(beliefs)
            .Concat(network.RecordsWith<Conclusion.ForbidState>())
            .Concat(network.RecordsWith<Conclusion.ForbidWork>())
            .Concat(network.RecordsWith<Conclusion.Finding>())
            .Concat(network.RecordsWith<Conclusion.Know>())
            .Concat(network.RecordsWith<Conclusion.Caution>().Where(source => source.Effect.Conclusion is Conclusion.Caution { Step: < 0 }))
            .Concat(network.RecordsWith<Conclusion.Tool>().Where(source => source.Effect.Conclusion is Conclusion.Tool { Step: < 0 }))
            .Concat(network.RecordsWith<Conclusion.Supply>().Where(source => source.Effect.Conclusion is Conclusion.Supply { Step: < 0 }));
    }
}
