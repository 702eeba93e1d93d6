using FsCheck;
using FsCheck.Fluent;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.FsCheck;
using ProcedureRules.Testing.Laws;

namespace ProcedureRules.Tests.Docs;

/// <summary>The code of the page for developers, word by word, so that it compiles and runs.</summary>
internal static class EmbeddingExamples
{
    /// <summary>Plans, states a fact, plans again; prints the steps and the questions.</summary>
    public static void PlanTwice()
    {
        var loaded = ProcedureEngine.Load("rules");
        if (loaded.Engine is not { } engine) { foreach (var mistake in loaded.Diagnostics) Console.Error.WriteLine(mistake.ToSnippet()); return; }
        var opened = engine.Open("samples/jobs/oil-pan.yaml");
        if (opened.Session is not { } session) { foreach (var mistake in opened.Diagnostics) Console.Error.WriteLine(mistake.ToSnippet()); return; }
        var before = session.Plan();
        session.State("oil_pan.drop_available=6 in");
        var after = session.Plan();
        foreach (var step in after.Plan!.Steps) Console.WriteLine($"{step.Number,3}. {step.Text.In(UnitSystem.Us)}");
        foreach (var question in after.Plan.Questions) Console.WriteLine($"?   {question.Text.In(UnitSystem.Us)}");
    }

    /// <summary>Holds plans on generated vehicles to the laws.</summary>
    public static void HoldToLaws()
    {
        var engine = ProcedureEngine.Load("rules").Engine!;
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(3), Prop.ForAll(Generated.Vehicles(engine, "replace_starter"), vehicle =>
            engine.Open(vehicle.Situation).Session!.Plan().Plan is not { } plan || PackLaws.Broken(engine, plan).Count == 0));
    }
}
