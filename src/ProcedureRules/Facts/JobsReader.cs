using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads the jobs of a work order.</summary>
internal sealed class JobsReader(SituationBuilder builder, SheetLayer layer, DiagnosticBag bag)
{
    /// <summary>Reads them into the builder.</summary>
    public void Read()
    {
        var first = new Dictionary<JobRequest, SourceSpan>();
        foreach (var item in layer.Root.List("jobs"))
        {
            var map = item as YamlMapping;
            if ((item as YamlScalar ?? map?.Scalar("job")) is not { IsNothing: false } name)
                continue;
            if (!builder.Vocabulary.Jobs.TryGetValue(name.Text, out var job))
                bag.Add(Messages.UnknownJob(name.Span, name.Text, builder.Vocabulary.Jobs.Keys));
            else if (PartOf(job, name, map?.Scalar("on")) is { } part)
                Ask(new JobRequest(job, part), name, first);
        }
    }

    private void Ask(JobRequest request, YamlScalar name, Dictionary<JobRequest, SourceSpan> first)
    {
        if (first.TryAdd(request, name.Span))
            builder.Ask(request);
        else
            bag.Add(Messages.StatedTwice(name.Span, $"{request.Job} on {request.On}", first[request]));
    }

    private Part? PartOf(JobDefinition job, YamlScalar name, YamlScalar? on)
    {
        var vehicle = builder.Find(Vocabulary.VehicleKind)!;
        var due = job.On ?? vehicle.Kind;
        if (on is not null)
        {
            var part = PartNames.Find(on.Text, on.Span, builder, isSilentOnAbsent: false, bag);
            if (part is null || part.Kind.IsA(due))
                return part;
            bag.Add(Messages.JobOnOtherKind(on.Span, job.Name, part.Name, part.Kind.Name, due.Name));
            return null;
        }

        var parts = builder.PartsOf(due).ToList();
        if (parts.Count == 1)
            return parts[0];
        if (builder.HasGaps && parts.Count == 0)
            return null;
        bag.Add(parts.Count == 0
            ? Messages.JobWithoutPart(name.Span, job.Name, due.Name)
            : Messages.JobNeedsPart(name.Span, job.Name, due.Name, parts.Select(part => part.Name)));
        return null;
    }
}
