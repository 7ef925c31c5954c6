using StudioKit.Web.Storage;

namespace StudioKit.Web.Views;

/// <summary>Words for how kits are kept.</summary>
internal static class KeepingWords
{
    public static string Of(KeepingState state, KeepingTrouble trouble) => state switch
    {
        KeepingState.Nothing => "No kit is open.",
        KeepingState.Saving => "Saving",
        KeepingState.Saved => "Saved on this device",
        KeepingState.NotSaved => $"Not saved: {Of(trouble)}",
        KeepingState.Elsewhere => "Not saved from here: another tab works on this kit.",
        KeepingState.ThrownAway => "Thrown away; the next change takes it back.",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "A state without words."),
    };

    public static string Of(KeepingTrouble trouble) => trouble switch
    {
        KeepingTrouble.Full => "the browser gives this page no more room. Free some room on the device, or save the kit as a file.",
        KeepingTrouble.NewerPage => "a newer version of this page wrote the kits here, and this one leaves them alone. Load the page anew, or save the kit as a file.",
        KeepingTrouble.Waiting => "an older version of this page is open in another tab. Close that tab, then try again.",
        KeepingTrouble.Refused => "the browser keeps nothing for this page, as in a window that leaves no traces. Save the kit as a file.",
        _ => throw new ArgumentOutOfRangeException(nameof(trouble), trouble, "A trouble without words."),
    };

    public static string Of(KeepingNotice notice) => notice.Kind switch
    {
        KeepingNoticeKind.DiedOver => $"Last time the page did not get through {notice.Name}, so it was not opened again by itself. It is in the list, as it was.",
        KeepingNoticeKind.KeptAsCopy => $"Another tab had changed {notice.Name} meanwhile. Its changes stay there; yours are kept as {notice.Other}.",
        KeepingNoticeKind.NameTaken => $"Another kit is called {notice.Name} here, so this one is {notice.Other}.",
        KeepingNoticeKind.KnownAlready => $"{notice.Name} is on this device already, word for word.",
        KeepingNoticeKind.Opened => $"{notice.Name} is kept on this device.",
        KeepingNoticeKind.PartTaken => $"The part {notice.Name} lies beside {notice.Other} from now on.",
        KeepingNoticeKind.PartUnnamed => $"{notice.Name} was not opened: it says no 'kit:', so it is a part, and no kit opened with it or in hand names a part of that name. Open it together with its kit.",
        KeepingNoticeKind.PartOther => $"{notice.Name} was not taken: {notice.Other} has another part of that name beside it. Rename one of them, in its file and in the kit.",
        KeepingNoticeKind.Corrected => $"{notice.Name} is kept with {notice.Other}, which is planned with it from now on.",
        KeepingNoticeKind.CorrectionOfOther => $"{notice.Name} was not taken: it was measured for another kit than the one in hand. It is of {notice.Other}. Open that kit first, then the correction.",
        KeepingNoticeKind.CorrectionThere => $"{notice.Name} was not taken: another correction is kept with {notice.Other} already. Remove that one under Test frames first; it can be saved as a file there.",
        KeepingNoticeKind.NotOpened => $"{notice.Name} was not opened: {notice.Other}",
        KeepingNoticeKind.Exported => $"All kits on this device ({notice.Other}) are in {notice.Name}. This page reads that file again, and any program that unpacks archives does.",
        KeepingNoticeKind.ThrownAway => $"{notice.Name} is thrown away. It can be taken back for a month.",
        _ => throw new ArgumentOutOfRangeException(nameof(notice), notice.Kind, "A notice without words."),
    };

    /// <summary>Whether it tells of something that did not go as it was meant.</summary>
    public static bool IsBad(KeepingNoticeKind kind) => kind is KeepingNoticeKind.NotOpened or KeepingNoticeKind.DiedOver or KeepingNoticeKind.PartUnnamed or KeepingNoticeKind.PartOther
        or KeepingNoticeKind.CorrectionOfOther or KeepingNoticeKind.CorrectionThere;

    public static string Of(PageCopyState copy) => copy switch
    {
        PageCopyState.Whole => "The whole page is on this device: it works without a network.",
        PageCopyState.Newer => "The whole page is on this device, and a newer one lies ready.",
        PageCopyState.Getting => "The page is being copied to this device, so that it works without a network.",
        PageCopyState.None => "This browser keeps no copy of the page: it needs the network at every start.",
        PageCopyState.Unknown => "",
        _ => throw new ArgumentOutOfRangeException(nameof(copy), copy, "A state without words."),
    };

    public static string Of(StorageRoom room)
    {
        var used = FormattableString.Invariant($"{room.UsedMegabytes:0.#} of {room.GivenMegabytes:0} MB are used.");
        return room.IsPromised
            ? $"The browser promised to clear nothing away by itself. {used}"
            : $"The browser may clear the kits away when the device runs short of room. {used}";
    }
}
