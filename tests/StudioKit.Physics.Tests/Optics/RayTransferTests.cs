using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class RayTransferTests
{
    private static readonly Gen<RayTransfer> AnyElement = Gen.OneOf(
        Gen.Double[-0.5, 0.5].Select(RayTransfer.Gap),
        Gen.Double[-20, 20].Select(RayTransfer.Lens),
        Gen.Double[1, 2].Select(RayTransfer.Relay));

    [Fact]
    public void A_gap_in_two_pieces_equals_the_whole_gap() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((first, second) =>
            Near(RayTransfer.Gap(first).Then(RayTransfer.Gap(second)), RayTransfer.Gap(first + second)));

    [Fact]
    public void A_thin_lens_in_two_layers_equals_the_whole_lens() =>
        Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20]).Sample((first, second) =>
            Near(RayTransfer.Lens(first).Then(RayTransfer.Lens(second)), RayTransfer.Lens(first + second)));

    [Fact]
    public void A_relay_in_two_stages_enlarges_by_the_product() =>
        Gen.Select(Gen.Double[1, 3], Gen.Double[1, 3]).Sample((first, second) =>
            Near(RayTransfer.Relay(first).Then(RayTransfer.Relay(second)), RayTransfer.Relay(first * second)));

    [Fact]
    public void Where_a_chain_is_cut_makes_no_difference() =>
        Gen.Select(AnyElement, AnyElement, AnyElement).Sample((a, b, c) => Near(a.Then(b).Then(c), a.Then(b.Then(c))));

    [Fact]
    public void Any_chain_in_air_keeps_the_lagrange_invariant() =>
        AnyElement.Array[1, 6].Sample(chain =>
            Math.Abs(chain.Aggregate(RayTransfer.Nothing, (whole, next) => whole.Then(next)).Determinant - 1) < 1e-9);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_element_refuses_what_is_no_number(double bad)
    {
        FluentActions.Invoking(() => RayTransfer.Gap(bad)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => RayTransfer.Lens(bad)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => RayTransfer.Relay(bad)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static bool Near(in RayTransfer left, in RayTransfer right) =>
        Close(left.A, right.A) && Close(left.B, right.B) && Close(left.C, right.C) && Close(left.D, right.D);

    private static bool Close(double left, double right) => Math.Abs(left - right) <= 1e-12 * (1 + Math.Abs(right)) * 100;
}
