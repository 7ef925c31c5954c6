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

    /// <summary>Says where what fires the flashes is slower than the camera.</summary>
    public static IEnumerable<string> Caveats(KitSpec kit, SetUpSpec setUp)
    {
        var sync = kit.SyncOf(setUp);
        if (sync.Seconds <= kit.Camera.FlashSync.Seconds)
        {
            yield break;
        }

        var slowest = setUp.Lights.Select(kit.TriggerOf).Append(kit.SenderOf(setUp)).First(trigger => trigger?.Sync == sync)!;
        yield return $"The {slowest.Name} fires in time from {sync.Nominal} on; the camera alone would allow {kit.Camera.FlashSync.Nominal}.";
    }
}
