namespace ProcedureRules.Testing.Xunit;

/// <summary>Known to the test framework by its bare name: what carries it failed a test rather than broke it.</summary>
internal interface IAssertionException;
