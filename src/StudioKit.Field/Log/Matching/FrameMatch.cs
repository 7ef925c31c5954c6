namespace StudioKit.Field.Log.Matching;

/// <summary>What a picture shows and how it was taken, put together from its file, its sidecar, the log and the kit.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Subject">Whom it shows.</param>
/// <param name="Framing">In which framing and set-up it was taken.</param>
public sealed record FrameMatch(LoggedPicture Picture, SubjectMatch Subject, FramingMatch Framing)
{
    /// <summary>Whether the camera's clock was given; where it was not, a time that is logged already stays.</summary>
    public bool IsClockGiven { get; init; }

    /// <summary>The record; what is known of the picture already stays, unless its files say otherwise now. None where it is not known whom it shows.</summary>
    /// <remarks>A framing or set-up that lens, scale or settings only look like takes the place of none that is recorded.</remarks>
    /// <param name="known">Frames of the log.</param>
    public FieldFrame? ToFrame(IEnumerable<FieldFrame> known)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (Subject.Subject is not { } subject)
        {
            return null;
        }

        var read = FieldFrame.From(subject.Id, Picture.FileName, Picture.Settings, TimeSpan.Zero) with
        {
            Taken = Subject.Taken is { } taken ? taken : null,
            MicrometresPerPixel = Picture.ValidScale?.MicrometresPerPixel,
            Framing = Framing.Framing,
            SetUp = Framing.SetUp,
        };
        return known.FirstOrDefault(frame => frame.Id == read.Id) is not { } before
            ? read
            : before.ReadAgain(read) with
            {
                Taken = IsClockGiven ? read.Taken ?? before.Taken : before.Taken ?? read.Taken,
                Framing = Framing.Kind == FramingMatchKind.Sidecar || before.Framing.Length == 0 ? read.Framing : before.Framing,
                SetUp = before.SetUp.Length == 0 ? read.SetUp : before.SetUp,
            };
    }
}
