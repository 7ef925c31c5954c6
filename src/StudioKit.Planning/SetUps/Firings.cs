using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Triggers;

namespace StudioKit.Planning.SetUps;

/// <summary>How the flashes of set-ups are fired.</summary>
internal static class Firings
{
    /// <summary>How a light is fired; none where the kit does not say.</summary>
    public static FiringPlan? Of(KitSpec kit, SetUpSpec setUp, LightSpec light)
    {
        if (kit.TriggerOf(light) is not { } trigger)
        {
            return null;
        }

        var sender = trigger.Kind == TriggerKind.RadioReceiver ? kit.SenderOf(setUp) : null;
        var group = trigger.Kind == TriggerKind.RadioReceiver && Math.Max(trigger.Groups, sender?.Groups ?? 1) > 1 ? light.Group : null;
        return new FiringPlan(trigger.Name, trigger.Kind, sender?.Name, trigger.Channel ?? sender?.Channel, group);
    }
}
