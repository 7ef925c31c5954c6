using StudioKit.Kits;

namespace StudioKit.Planning.Exploring;

/// <summary>Plans designs, each as its written kit would be planned; not for several threads at once.</summary>
internal sealed class DesignEvaluator(DesignSpace space, DesignAim aim, PlanningServices services)
{
    private readonly PlanSession _session = new(services);

    /// <summary>Plans a design.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public TriedDesign Try(DesignCode code, CancellationToken cancellation)
    {
        var read = space.Read(code);
        if (read?.Kit is null)
        {
            return new(code, DesignVerdict.CannotBe, null, [], read?.Diagnostics.FirstOrDefault(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error)?.Message);
        }

        var plan = _session.PlanWithoutRemedies(read, cancellation);
        var figures = FigureReader.Of(plan, space.PriceOf(code));
        return new(
            code, plan.Stands ? aim.VerdictOf(figures) : DesignVerdict.Fails, figures,
            [.. plan.Checks.Where(check => !check.Passed).Select(check => new FailedCheck(check.Kind, [.. check.Parts]))], null);
    }
}
