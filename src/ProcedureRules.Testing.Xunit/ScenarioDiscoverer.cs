using Xunit.Sdk;
using Xunit.v3;

namespace ProcedureRules.Testing.Xunit;

/// <summary>Makes the tests of <see cref="ScenariosAttribute"/>.</summary>
internal sealed class ScenarioDiscoverer : IXunitTestCaseDiscoverer
{
    /// <inheritdoc/>
    public ValueTask<IReadOnlyCollection<IXunitTestCase>> Discover(ITestFrameworkDiscoveryOptions discoveryOptions, IXunitTestMethod testMethod, IFactAttribute factAttribute)
    {
        var scenarios = (ScenariosAttribute)factAttribute;
        var tests = PackFolder.At(scenarios.Folder).Cases.Values.Where(one => one.IsMeantBy(scenarios.Filter)).Select(one => new ScenarioTest(scenarios.Folder, one.Name));
        return new([.. tests.Prepend(new ScenarioTest(scenarios.Folder, null)).Select(test => Test(discoveryOptions, testMethod, scenarios, test))]);
    }

    private static XunitTestCase Test(ITestFrameworkDiscoveryOptions options, IXunitTestMethod method, ScenariosAttribute scenarios, ScenarioTest test)
    {
        var details = TestIntrospectionHelper.GetTestCaseDetails(options, method, scenarios, [test], null, test.ToString(), null, null);
        // The line of the YAML file, so that an editor leads there.
        var place = test.Case?.Span;
        return new XunitTestCase(
            details.ResolvedTestMethod,
            test.ToString(),
            details.UniqueID,
            details.Explicit,
            details.SkipExceptions,
            details.SkipReason,
            details.SkipType,
            details.SkipUnless,
            details.SkipWhen,
            TestIntrospectionHelper.GetTraits(method, null),
            [test],
            place?.File is { } file ? Path.GetFullPath(file.Path) : details.SourceFilePath,
            place?.Line ?? details.SourceLineNumber,
            details.Timeout);
    }
}
