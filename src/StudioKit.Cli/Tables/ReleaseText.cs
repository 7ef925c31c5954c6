using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;

namespace StudioKit.Cli.Tables;

/// <summary>Words for what leaves the log, and why.</summary>
internal static class ReleaseText
{
    public static string Fate(FieldFate fate) => fate switch
    {
        FieldFate.Published => "published",
        FieldFate.Coarsened => "coarsened",
        _ => "WITHHELD",
    };

    public static string Reason(ReleasedField field) => field.Reason switch
    {
        FieldReason.NothingSensitive => "nothing in this session is sensitive",
        FieldReason.TellsNoPlace => "tells no place",
        FieldReason.Released => "released by you",
        FieldReason.Cell => "the middle of its cell stands for the place; every place of the cell is told alike",
        FieldReason.Day => "the day stands for the time" + Release(field),
        FieldReason.NeutralName => "a name that tells nothing stands for it" + Release(field),
        FieldReason.IsThePlace => "is the place" + Release(field),
        FieldReason.NoCellHoldsIt => "known too badly for any cell",
        FieldReason.WordsMayTell => "words may tell the place" + Release(field),
        FieldReason.HoldsPlaceWord => "holds a word of the place's or the session's name, or its coordinates" + Release(field),
        FieldReason.TimeMayTell => "a time can be matched with other records" + Release(field),
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    public static string Note(ReleaseNote note, Func<string, string> nameOf) => note.Kind switch
    {
        ReleaseNoteKind.OthersFollow =>
            $"session {nameOf(note.RecordId)}: {Subjects(note.Count)} not sensitive but told as coarsely as {nameOf(note.Detail)}, because their rows name the same session; "
            + "with --leave-out-sensitive they leave as recorded and the sensitive stay behind",
        ReleaseNoteKind.LeftOut => $"{Subjects(note.Count)} left out as sensitive",
        ReleaseNoteKind.SharedPictureLeftOut => $"{(note.Count == 1 ? "1 picture stays" : $"{note.Count} pictures stay")} behind, too, as a sensitive subject is in it: {note.Detail} first",
        ReleaseNoteKind.PictureNameHoldsPlaceWord =>
            $"session {nameOf(note.RecordId)}: {(note.Count == 1 ? "a picture's file name holds" : $"{note.Count} pictures' file names hold")} a word of its place, {note.Detail} first; "
            + "an export gives them neutral names, but copies of 'studiokit scale' keep theirs",
        ReleaseNoteKind.NothingToExport => $"session {nameOf(note.RecordId)}: has no subject, so nothing of it leaves",
        ReleaseNoteKind.NeighbourToldExactly =>
            $"session {nameOf(note.RecordId)}: sensitive, but {Sessions(note.Count)} of the same day or near the same place told exactly, {nameOf(note.Detail)} first; "
            + "whoever compares them may guess the place",
        ReleaseNoteKind.DescriptionHoldsPlaceWord =>
            $"session {nameOf(note.RecordId)}: its place is withheld, but a word of it stands in what is said of the data set ({note.Detail})",
        ReleaseNoteKind.LooksLikeFormula =>
            $"{note.Detail}: {note.Count} begin with a sign that spreadsheets take for a formula, first in {nameOf(note.RecordId)}; "
            + "cells are written as the standard has them, so import the file as text",
        _ => throw new ArgumentOutOfRangeException(nameof(note)),
    };

    public static string Level(PlaceSensitivity sensitivity) => sensitivity switch
    {
        PlaceSensitivity.Open => "as recorded",
        PlaceSensitivity.Hundredth => "sensitive: place by cells of 0.01 degree or more, and only what tells no place",
        PlaceSensitivity.Tenth => "sensitive: place by cells of 0.1 degree or more, and only what tells no place",
        _ => "sensitive: no place but the country, and only what tells no place",
    };

    private static string Release(ReleasedField field) => ReleaseWords.For(field.Term) is { } word ? $"; --release {word} tells it" : "";

    private static string Subjects(int count) => count == 1 ? "1 subject is" : $"{count} subjects are";

    private static string Sessions(int count) => count == 1 ? "a session" : $"{count} sessions";
}
