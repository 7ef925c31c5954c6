using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Frames;

/// <summary>Everything about test frames; made with the first question about them, so that a first plan does without its assembly.</summary>
internal sealed class FrameDesk
{
    private readonly CorrectedKits _corrections = new();
    private readonly ReadPictures _pictures;
    private readonly TestFrames _frames;
    private readonly PowerLadders _ladders;

    /// <param name="plans">Where plans come from.</param>
    /// <param name="picture">The picture that a question brings along.</param>
    public FrameDesk(PlannedKits plans, IDecodedPicture picture)
    {
        _pictures = new ReadPictures(picture, _corrections);
        _frames = new TestFrames(plans, _pictures);
        _ladders = new PowerLadders(plans, _pictures);
        plans.CorrectBy(_corrections.Of);
    }

    /// <inheritdoc cref="ReadPictures.Read"/>
    public ReadPicture Read(PictureRequest request) => _pictures.Read(request);

    /// <inheritdoc cref="TestFrames.Of(FrameRequest)"/>
    public FrameAnswer Frame(FrameRequest request) => _frames.Of(request);

    /// <inheritdoc cref="PowerLadders.Of(LadderRequest)"/>
    public LadderAnswer Ladder(LadderRequest request) => _ladders.Of(request);

    /// <inheritdoc cref="CorrectedKits.Keep"/>
    public KeptCorrections Correct(CorrectionTexts request) => _corrections.Keep(request);

    /// <inheritdoc cref="ReadPictures.Map"/>
    public byte[] Map(string picture) => _pictures.Map(picture);
}
