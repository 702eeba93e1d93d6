using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace ProcedureRules.Inference;

/// <summary>
/// The rule network, the same for every rule base and compiled once a process: supports are merged to atoms, atoms matched to instances, and
/// each instance fires.
/// </summary>
internal static class SessionNetwork
{
    private const string Merge = "merge";
    private const string Match = "match";

    private static readonly Lazy<ISessionFactory> Factory = new(Compile);

    /// <summary>A session with its workspace in it. Linked facts wait for <see cref="ISession.PropagateLinked"/>, a wave at a time.</summary>
    public static ISession CreateSession(Workspace workspace)
    {
        var session = Factory.Value.CreateSession();
        session.AutoPropagateLinkedFacts = false;
        session.Insert(workspace);
        return session;
    }

    /// <summary>The workspace that an aggregate was made for.</summary>
    public static Workspace WorkspaceOf(ITuple tuple)
    {
        foreach (var fact in tuple.Facts)
            if (fact.Value is Workspace workspace) return workspace;
        throw new InvalidOperationException("An aggregate was made without its workspace.");
    }

    private static ISessionFactory Compile()
    {
        // The expressions are never evaluated: reading the workspace in them is what makes the aggregates part of its tuple.
        Expression<Func<Workspace, Statement, Workspace>> ofStatement = (workspace, statement) => workspace;
        Expression<Func<Workspace, Node, Workspace>> ofNode = (workspace, node) => workspace;
        Expression<Action<IContext, Workspace, Instance>> conclude = (context, workspace, instance) => workspace.Conclude(context, instance);

        var merged = Element.Aggregate(
            typeof(Node),
            Merge,
            [Element.Expression(nameof(Workspace), ofStatement)],
            PatternOf<Statement>("statement"),
            typeof(MergeAggregatorFactory));
        var matched = Element.Aggregate(
            typeof(Instance),
            Match,
            [Element.Expression(nameof(Workspace), ofNode)],
            PatternOf<Node>("node", merged),
            typeof(MatchAggregatorFactory));
        var rule = Element.RuleDefinition(
            "An instance concludes what its rule or mechanism says",
            "",
            0,
            Element.AndGroup(PatternOf<Workspace>("workspace"), PatternOf<Instance>("instance", matched)),
            Element.ActionGroup(Element.Action(conclude)));

        var compiler = new RuleCompiler();
        compiler.AggregatorRegistry.RegisterFactory(Merge, typeof(MergeAggregatorFactory));
        compiler.AggregatorRegistry.RegisterFactory(Match, typeof(MatchAggregatorFactory));
        return compiler.Compile([rule]);
    }

    private static PatternElement PatternOf<T>(string name, RuleElement? source = null)
    {
        KeyValuePair<string, LambdaExpression>[] none = [];
        return source is null ? Element.Pattern(typeof(T), name, none) : Element.Pattern(typeof(T), name, none, source);
    }
}
