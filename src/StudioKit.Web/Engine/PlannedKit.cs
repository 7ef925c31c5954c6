using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Previewing;

namespace StudioKit.Web.Engine;

/// <summary>A kit with its plan, and what follows a hand that moves its studio.</summary>
/// <param name="read">The kit as it was read.</param>
/// <param name="plan">Its plan.</param>
internal sealed class PlannedKit(KitReadResult read, Plan plan)
{
    private readonly Lazy<StudioPreview> _preview = new(() => new StudioPreview(read, plan));

    /// <summary>The kit as it was read.</summary>
    public KitReadResult Read => read;

    /// <summary>Its plan.</summary>
    public Plan Plan => plan;

    /// <summary>Light on the panel of one of its set-ups; none where that lights none.</summary>
    /// <param name="setUp">Name of the set-up.</param>
    public PanelLightPlan? Light(string setUp) => plan.PanelLights.FirstOrDefault(light => light.SetUp == setUp);

    /// <summary>Its studio being moved.</summary>
    public StudioPreview Preview => _preview.Value;
}
