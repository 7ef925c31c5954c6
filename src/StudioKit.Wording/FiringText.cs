using StudioKit.Kits.Triggers;
using StudioKit.Planning;
using StudioKit.Planning.Firing;
using StudioKit.Planning.Session;

namespace StudioKit.Wording;

/// <summary>How flashes are fired, in words.</summary>
public static class FiringText
{
    /// <summary>How one flash is fired, e.g. <c>radio, channel 5, group A</c>.</summary>
    /// <param name="firing">How.</param>
    /// <exception cref="ArgumentNullException">There is nothing to tell.</exception>
    public static string Of(FiringPlan firing)
    {
        ArgumentNullException.ThrowIfNull(firing);
        return firing.Kind switch
        {
            TriggerKind.RadioReceiver => $"radio{(firing.Channel is { } channel ? FormattableString.Invariant($", channel {channel}") : "")}{(firing.Group is { } group ? $", group {group}" : "")}",
            TriggerKind.Cord => "cord",
            TriggerKind.OpticalCell => "optical cell",
            TriggerKind.Hand => "fired by hand",
            _ => "radio sender",
        };
    }

    /// <summary>Behind a flash's name on a card; empty where the kit does not say. In brief the channel and group alone.</summary>
    /// <param name="light">The flash.</param>
    /// <param name="inBrief">Whether room is short.</param>
    public static string Behind(LightPlan light, bool inBrief)
    {
        ArgumentNullException.ThrowIfNull(light);
        return light.FiredBy is not { } firing ? ""
            : inBrief && firing is { Kind: TriggerKind.RadioReceiver, Channel: { } channel } ? FormattableString.Invariant($"; radio {channel}{firing.Group}")
            : $"; {Of(firing)}";
    }

    /// <summary>What to set, flash by flash.</summary>
    /// <param name="fired">The flashes.</param>
    public static string Step(IReadOnlyList<FlashFiring> fired) =>
        $"Set the triggers: {string.Join("; ", fired.Select(flash => $"{flash.Flash} ({RoleText.Word(flash.Role)}) {With(flash.FiredBy)}"))}.";

    /// <summary>The radio channels in use.</summary>
    internal static string Channels(IReadOnlyList<int> channels) => FormattableString.Invariant($"Your flashes listen on channel{(channels.Count == 1 ? "" : "s")} {string.Join(", ", channels)}");

    internal static string Of(TriggerCaveat caveat) => caveat.Kind switch
    {
        TriggerCaveatKind.CellUnderSheet => $"{caveat.Flash}: behind sheet and skirts the {caveat.Trigger} may not see the other flashes; turn its eye to the sheet, and try it.",
        TriggerCaveatKind.CellInSun => $"{caveat.Flash}: the sun dazzles the {caveat.Trigger}; shade its eye, and try it.",
        TriggerCaveatKind.CellBeforeTime => $"{caveat.Flash}: a metered flash sends a flash ahead, on which the {caveat.Trigger} fires too early; set the power of the others by hand.",
        _ => throw new ArgumentOutOfRangeException(nameof(caveat), caveat.Kind, "A caveat without words."),
    };

    internal static string Of(TriggerFault fault) => $"{fault.SetUp}, {fault.Flash} ({RoleText.Word(fault.Role)}): {Says(fault)}.";

    // A name may be that of a sender that no kit has.
    private static string Says(TriggerFault fault) => fault.Kind switch
    {
        TriggerFaultKind.NotFired => "nothing fires it, say what does by 'trigger'",
        TriggerFaultKind.SenderAtFlash => $"the {fault.Trigger} sends from the camera, a flash needs a receiver",
        TriggerFaultKind.NoSender => fault.Other is { } other ? $"the {other} is no radio sender" : "no radio on the camera fires its receiver, add one with 'kind: radio-sender'",
        TriggerFaultKind.ShoeTaken => $"the {fault.Other} has the camera's hot shoe already",
        TriggerFaultKind.UsedTwice => FormattableString.Invariant($"{fault.Counts!.Value.Needed} of the {fault.Trigger} are needed and {fault.Counts.Value.Carried} carried"),
        TriggerFaultKind.InOtherFlash => $"the {fault.Trigger} is built into the {fault.Other}",
        TriggerFaultKind.OtherChannel => FormattableString.Invariant($"it listens on channel {fault.Channels!.Value.Its}, and the {fault.Other} sends on {fault.Channels.Value.Senders}"),
        TriggerFaultKind.UnknownGroup => $"the {fault.Other} has no group {fault.Group}",
        TriggerFaultKind.SharesGroup => $"it has another power than the {fault.Other} in the same group {fault.Group}, for which the sender sets one",
        TriggerFaultKind.OutOfRange => $"it stands {DistanceFormat.Centimetres(fault.Range!.Value.Way)} off by the {fault.Trigger}, which reaches {DistanceFormat.Centimetres(fault.Range.Value.Reach)}",
        TriggerFaultKind.NothingToSee => $"the {fault.Trigger} sees no flash go off that it could follow",
        TriggerFaultKind.ShutterTooShort => "no hand is as quick as the shutter, which must stand open for a second",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "A fault without words."),
    };

    private static string With(FiringPlan firing) => firing.Kind switch
    {
        TriggerKind.RadioReceiver => Of(firing) is var radio ? $"{firing.Trigger}, {radio["radio".Length..].TrimStart(',', ' ')}".TrimEnd(',', ' ') : "",
        TriggerKind.Hand => "by hand",
        _ => firing.Trigger,
    };
}
