using ProcedureRules.Language;
using ProcedureRules.Language.Nodes;

namespace ProcedureRules.Testing.Linting;

/// <summary>The expressions and conclusions of a compiled rule, wherever in it they stand.</summary>
internal static class RuleNodes
{
    /// <summary>Every expression: of its conditions, its conclusions and its texts.</summary>
    public static IEnumerable<Node> Of(CompiledRule rule) => rule.Tests.Select(test => test.Node)
        .Concat(ConclusionsOf(rule).SelectMany(Of)).OfType<Node>()
        .Concat(rule.Because?.Nodes ?? []);

    /// <summary>Every conclusion, those of options after the choice itself.</summary>
    public static IEnumerable<Conclusion> ConclusionsOf(CompiledRule rule) =>
        rule.Conclusions.SelectMany(conclusion => conclusion is Conclusion.OneOf choice ? choice.Options.SelectMany(option => option.Then).Prepend(conclusion) : [conclusion]);

    /// <summary>The expressions of one conclusion; of a choice, those of its options' texts and conditions.</summary>
    public static IEnumerable<Node?> Of(Conclusion conclusion) => conclusion switch
    {
        Conclusion.Set set => [set.Value.Node],
        Conclusion.Demand demand => [demand.Value.Node],
        Conclusion.Slower slower => [slower.Factor.Node],
        Conclusion.Check check => [check.Limits.Node, .. check.Text.Nodes],
        Conclusion.Wait wait => [wait.Least?.Node, wait.Most?.Node, .. wait.Text?.Nodes ?? []],
        Conclusion.OneOf choice => choice.Options.SelectMany(option => option.Text.Nodes.Prepend(option.If?.Node)),
        Conclusion.Caution caution => caution.Text.Nodes,
        Conclusion.Detail detail => detail.Text.Nodes,
        Conclusion.Tool tool => tool.Text.Nodes,
        Conclusion.Supply supply => supply.Text.Nodes,
        Conclusion.Stop stop => stop.Text.Nodes,
        Conclusion.Offer offer => offer.Text?.Nodes ?? [],
        _ => [],
    };

    /// <summary>The slots of variables that a conclusion uses.</summary>
    public static IEnumerable<int> SlotsOf(Conclusion conclusion)
    {
        int[] own = conclusion switch
        {
            Conclusion.Need c => [c.Step, c.State.Slot],
            Conclusion.Order c => [c.First, c.Second],
            Conclusion.ForbidStep c => [c.Step],
            Conclusion.ForbidWork c => [c.Slot],
            Conclusion.ForbidState c => [c.State.Slot],
            Conclusion.Do c => [c.Slot, c.Before, c.After],
            Conclusion.Offer c => [c.Slot],
            Conclusion.Set c => [c.Slot],
            Conclusion.Demand c => [c.Slot],
            Conclusion.Relate c => [c.First, c.Second],
            Conclusion.Caution c => [c.Step],
            Conclusion.Check c => [c.Step],
            Conclusion.Finding c => [c.Slot],
            _ => [],
        };
        return own.Concat(Of(conclusion).OfType<Node>().SelectMany(SlotsOf));
    }

    /// <summary>The slots of variables that an expression reads.</summary>
    public static IEnumerable<int> SlotsOf(Node node) => node.All().SelectMany(one => one switch
    {
        FactQuantity fact => [fact.Slot],
        FactWords fact => [fact.Slot],
        FactText fact => [fact.Slot],
        DemandedQuantity fact => [fact.Slot],
        RelationHolds relation => [relation.First, relation.Second],
        _ => (IEnumerable<int>)[],
    });
}
