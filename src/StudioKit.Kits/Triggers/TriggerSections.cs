using StudioKit.Kits.Description;
using StudioKit.Kits.Lighting;

namespace StudioKit.Kits.Triggers;

/// <summary>Keys of what fires flashes.</summary>
internal static class TriggerSections
{
    public static readonly Section<TriggerSpec> Trigger = new Section<TriggerSpec>(
        "trigger", "What fires flashes: a radio, a cord, an optical cell, or a hand.", new() { Name = "", Kind = TriggerKind.RadioReceiver }, namedAmong: "triggers")
        .Required("name", "Name on the cards and the pack list; each trigger has its own.").Name((trigger, value) => trigger with { Name = value })
        .Required("kind", "What it is: the radio on the camera, a radio at a flash, a cord, an optical cell that fires along with any flash that it sees, or a hand on the flash's button.")
            .Choice<TriggerKind>("a kind of trigger", (trigger, value) => trigger with { Kind = value })
        .Optional("count", "How many of it are carried.", "1", "50").Count((trigger, value) => trigger with { Count = value }, trigger => trigger.Count)
        .Optional("channel", "Channel that a radio is set to; a receiver without one of its own is set to its sender's.", "1", "999").Count((trigger, value) => trigger with { Channel = value })
        .Optional("groups", "Groups that a radio tells apart, named A, B, C and so on.", "1", "16").Count((trigger, value) => trigger with { Groups = value }, trigger => trigger.Groups)
        .Optional("sets-power", "Whether a sender sets the power of each group from the camera; flashes of one group then have the same power.")
            .YesNo((trigger, value) => trigger with { SetsPower = value }, trigger => trigger.SetsPower)
        .Optional("sync", "Shortest shutter speed that it fires in time for, e.g. '1/160 s'; else the camera's flash sync.", "1/32000 s", "1 s").Shutter((trigger, value) => trigger with { Sync = value })
        .Optional("range", "How far it reaches; for a cord its length.", "5 cm", "1000 m").Length((trigger, value) => trigger with { Range = value }, trigger => trigger.Reach)
        .Reference("built-into", "flashes", "Name of the flash that it is built into; else a thing of its own, which is carried.", (trigger, value) => trigger with { BuiltInto = value })
        .Within("cell", LightingSections.Cell, "Cells it takes; leave out where it takes none.", (trigger, value) => trigger with { Cell = value })
        .Optional("cell-count", "Cells in one of it.", "1", "12").Count((trigger, value) => trigger with { CellCount = value }, trigger => trigger.CellCount)
        .Optional("mass", "Mass of one without cells; else what is usual for its kind.", "1 g", "5 kg").Mass((trigger, value) => trigger with { Mass = value })
        .Optional("packed", "Its three sides as it is packed, e.g. '75 mm x 40 mm x 35 mm'.", "5 mm", "1 m")
            .Box((trigger, value) => trigger with { PackedLength = value.First, PackedWidth = value.Second, PackedDepth = value.Third })
        .Optional("price", "Price of one where it is to be bought; else it is on hand.", "0", "100000").Price((trigger, value) => trigger with { Price = value })
        .Without(["channel", "groups"], trigger => !trigger.IsRadio, "is for a radio, and this is none", "Leave it out, or write 'kind: radio-receiver'.")
        .Without(["sets-power"], trigger => trigger.Kind != TriggerKind.RadioSender, "is for the radio on the camera", "Say it of the trigger with 'kind: radio-sender'.")
        .Without(["sync"], trigger => trigger.Kind is TriggerKind.Hand or TriggerKind.OpticalCell, "changes nothing: what fires without the camera's contact is no slower than the light that it waits for", "Leave it out.")
        .Without(["range"], trigger => trigger.Kind == TriggerKind.Hand, "changes nothing for a hand", "Leave it out.")
        .Without(["built-into"], trigger => trigger.Kind is not (TriggerKind.RadioReceiver or TriggerKind.OpticalCell), "is for a receiver or a cell in a flash", "Leave it out.")
        .Without(["count", "mass", "packed", "price", "cell", "cell-count"], trigger => !trigger.IsCarried, "changes nothing: nobody packs or buys it", "Leave it out; what is in a flash counts with the flash.")
        .Without(["cell-count"], trigger => trigger.Cell is null, "changes nothing without 'cell'", "Say which cells it takes: 'cell: aa-alkaline'.")
        .Check(NoChannel);

    private static Fault? NoChannel(TriggerSpec trigger) => trigger is { Kind: TriggerKind.RadioSender, Channel: null }
        ? new Fault("name", $"The sender '{trigger.Name}' has no channel.", "Say which it is set to: 'channel: 5'.")
        : null;
}
