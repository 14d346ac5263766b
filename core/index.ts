/**
 * The core's public face, for scripts: every formula and function by name, grouped by topic.
 *
 * Pages import the single files instead, so that they ship only what they show.
 */

export { angleOfViewFar, angleOfViewFarFormula } from './gaussian/angle-of-view-far.formula.ts';
export { angleOfView, angleOfViewFormula } from './gaussian/angle-of-view.formula.ts';
export { closeFocusFocalLength, closeFocusFocalLengthFormula } from './gaussian/close-focus-focal-length.formula.ts';
export { referenceDiagonal, cropFactor, cropFactorFormula } from './gaussian/crop-factor.formula.ts';
export { effectiveFNumber, effectiveFNumberFormula } from './gaussian/effective-f-number.formula.ts';
export { entrancePupilDistance, entrancePupilDistanceFormula } from './gaussian/entrance-pupil-distance.formula.ts';
export { entrancePupil, entrancePupilFormula } from './gaussian/entrance-pupil.formula.ts';
export { exitPupil, exitPupilFormula } from './gaussian/exit-pupil.formula.ts';
export {
  extensionForMagnification,
  extensionForMagnificationFormula,
} from './gaussian/extension-for-magnification.formula.ts';
export { fNumberFromAperture, fNumberFromApertureFormula } from './gaussian/f-number-from-aperture.formula.ts';
export { fieldHeight, fieldHeightFormula } from './gaussian/field-height.formula.ts';
export { fieldWidth, fieldWidthFormula } from './gaussian/field-width.formula.ts';
export { frameFill, frameFillFormula } from './gaussian/frame-fill.formula.ts';
export {
  magnificationFromFrameFill,
  magnificationFromFrameFillFormula,
} from './gaussian/magnification-from-frame-fill.formula.ts';
export {
  focalLengthForWorkingDistance,
  focalLengthForWorkingDistanceFormula,
} from './gaussian/focal-length-for-working-distance.formula.ts';
export {
  focalLengthFromConjugates,
  focalLengthFromConjugatesFormula,
} from './gaussian/focal-length-from-conjugates.formula.ts';
export { focusDistance, focusDistanceFormula } from './gaussian/focus-distance.formula.ts';
export { focusTravel, focusTravelFormula } from './gaussian/focus-travel.formula.ts';
export { imageDistanceOfSubject, imageDistanceOfSubjectFormula } from './gaussian/image-distance-of-subject.formula.ts';
export { imageDistance, imageDistanceFormula } from './gaussian/image-distance.formula.ts';
export { imageWidth, imageWidthFormula } from './gaussian/image-width.formula.ts';
export { lightLoss, lightLossFormula } from './gaussian/light-loss.formula.ts';
export {
  magnificationAtFocusDistance,
  magnificationAtFocusDistanceFormula,
} from './gaussian/magnification-at-focus-distance.formula.ts';
export {
  magnificationFromExtension,
  magnificationFromExtensionFormula,
} from './gaussian/magnification-from-extension.formula.ts';
export { magnificationFromField, magnificationFromFieldFormula } from './gaussian/magnification-from-field.formula.ts';
export {
  magnificationFromTravel,
  magnificationFromTravelFormula,
} from './gaussian/magnification-from-travel.formula.ts';
export { magnificationOfSubject, magnificationOfSubjectFormula } from './gaussian/magnification-of-subject.formula.ts';
export { magnification, magnificationFormula } from './gaussian/magnification.formula.ts';
export { magnificationsAtFocusDistance } from './gaussian/magnifications-at-focus-distance.ts';
export { nearestFocusDistance, nearestFocusDistanceFormula } from './gaussian/nearest-focus-distance.formula.ts';
export { imageBeyondFocus, magnificationBeyondFocus, type BeyondFocus } from './gaussian/newton.ts';
export { numericalAperture, numericalApertureFormula } from './gaussian/numerical-aperture.formula.ts';
export { pixelPitch } from './gaussian/pixel-pitch.ts';
export { pixelsPerMillimetre, pixelsPerMillimetreFormula } from './gaussian/pixels-per-millimetre.formula.ts';
export { powerInContact, focalLengthInContact } from './gaussian/powers-in-contact.ts';
export { stoppedDown, stoppedDownFormula } from './gaussian/stopped-down.formula.ts';
export { subjectDistance, subjectDistanceFormula } from './gaussian/subject-distance.formula.ts';
export {
  workingDistanceIntoTank,
  workingDistanceIntoTankFormula,
} from './gaussian/working-distance-into-tank.formula.ts';
export {
  workingDistanceFromMarks,
  workingDistanceFromMarksFormula,
} from './gaussian/working-distance-from-marks.formula.ts';
export { workingDistance, workingDistanceFormula } from './gaussian/working-distance.formula.ts';

export {
  backgroundWidthOfCone,
  defocusBlurOfCone,
  effectiveFNumberForBlur,
  magnificationOffPlaneOfCone,
} from './depth/blur-of-cone.ts';
export { balancedFocus, type BalancedFocus } from './depth/balanced-focus.ts';
export { coneOfLens, coneOfPupil, type Cone } from './depth/cone.ts';
export { depthOfFieldOfCone, depthOfFieldOfConeFormula } from './depth/depth-of-field-of-cone.formula.ts';
export {
  effectiveFNumberForDepth,
  effectiveFNumberForDepthFormula,
} from './depth/effective-f-number-for-depth.formula.ts';
export { farLimitOfCone, farLimitOfConeFormula } from './depth/far-limit-of-cone.formula.ts';
export { limitsOfCone } from './depth/limits-of-cone.ts';
export { nearLimitOfCone, nearLimitOfConeFormula } from './depth/near-limit-of-cone.formula.ts';
export { backgroundBlur, backgroundBlurFormula } from './depth/background-blur.formula.ts';
export { backgroundWidth, backgroundWidthFormula } from './depth/background-width.formula.ts';
export {
  circlesAcrossWidth,
  circleOfConfusionByWidth,
  circleOfConfusionByWidthFormula,
} from './depth/circle-of-confusion-by-width.formula.ts';
export {
  circlesAlongDiagonal,
  circleOfConfusionByDiagonal,
  circleOfConfusionByDiagonalFormula,
} from './depth/circle-of-confusion-by-diagonal.formula.ts';
export {
  pixelsPerCircle,
  circleOfConfusionByPixels,
  circleOfConfusionByPixelsFormula,
} from './depth/circle-of-confusion-by-pixels.formula.ts';
export {
  arcminute,
  circleOfConfusionByViewing,
  circleOfConfusionByViewingFormula,
} from './depth/circle-of-confusion-by-viewing.formula.ts';
export { combinedDepth } from './depth/combined-depth.ts';
export { defocusBlur, type PointOffPlane } from './depth/defocus-blur.ts';
export { defocusBlurOfEnds, defocusBlurOfEndsFormula } from './depth/defocus-blur-of-ends.formula.ts';
export { depthOfFieldCloseUp, depthOfFieldCloseUpFormula } from './depth/depth-of-field-close-up.formula.ts';
export { depthOfFieldInMedium, depthOfFieldInMediumFormula } from './depth/depth-of-field-in-medium.formula.ts';
export { depthOfField, depthOfFieldFormula } from './depth/depth-of-field.formula.ts';
export { farLimit, farLimitFormula } from './depth/far-limit.formula.ts';
export {
  hyperfocalDistanceFromPupil,
  hyperfocalDistanceFromPupilFormula,
} from './depth/hyperfocal-distance-from-pupil.formula.ts';
export { fNumberForDepth, fNumberForDepthFormula } from './depth/f-number-for-depth.formula.ts';
export { focusOffsetOfTurn, focusOffsetOfTurnFormula } from './depth/focus-offset-of-turn.formula.ts';
export { hyperfocalDistance, hyperfocalDistanceFormula } from './depth/hyperfocal-distance.formula.ts';
export { magnificationOffPlane } from './depth/magnification-off-plane.ts';
export { nearLimit, nearLimitFormula } from './depth/near-limit.formula.ts';
export { sharpWidthOfTilt, sharpWidthOfTiltFormula } from './depth/sharp-width-of-tilt.formula.ts';
export { subjectDepthInOneFrame, subjectDepthInOneFrameFormula } from './depth/subject-depth-in-one-frame.formula.ts';
export { subjectDepthOfTilt, subjectDepthOfTiltFormula } from './depth/subject-depth-of-tilt.formula.ts';
export { waveDepth, waveDepthFormula } from './depth/wave-depth.formula.ts';

export { edgeShift, edgeShiftFormula } from './stack/edge-shift.formula.ts';
export { focusedPlan, type FocusedFrame, type FocusedStack } from './stack/focused-plan.ts';
export { focusRingPlan, type FocusRingStack } from './stack/focus-ring-plan.ts';
export { frameCount, frameCountFormula } from './stack/frame-count.formula.ts';
export { frameStep, frameStepFormula } from './stack/frame-step.formula.ts';
export { framesInTime, framesLost, type StackPace } from './stack/frames-in-time.ts';
export { hiddenBandOfCone } from './stack/hidden-band-of-cone.ts';
export { hiddenBand, hiddenBandFormula } from './stack/hidden-band.formula.ts';
export { magnificationAfterStep, type BeforeStep } from './stack/magnification-after-step.ts';
export { railPlan, type RailStack, type RailPlan } from './stack/rail-plan.ts';
export { scaleBetweenFrames, type TwoFrames } from './stack/scale-between-frames.ts';
export { scaleBetweenFocusSettings, type TwoFocusSettings } from './stack/scale-between-focus-settings.ts';
export { scaleChangeFocusing, scaleChangeFocusingFormula } from './stack/scale-change-focusing.formula.ts';
export { scaleChangeOnRail, scaleChangeOnRailFormula } from './stack/scale-change-on-rail.formula.ts';
export { depthOfStack, depthOfStackFormula } from './stack/depth-of-stack.formula.ts';
export { oneFrameOrStack, type FramesWanted } from './stack/one-frame-or-stack.ts';
export { framesBeforeDeadline, framesBeforeDeadlineFormula } from './stack/frames-before-deadline.formula.ts';
export { stackTimeInTurn, stackTimeInTurnFormula } from './stack/stack-time-in-turn.formula.ts';
export { stackTime, stackTimeFormula } from './stack/stack-time.formula.ts';
export { stackTravel, stackTravelFormula } from './stack/stack-travel.formula.ts';

export { shutterOrFlash, type LightWanted } from './exposure/shutter-or-flash.ts';
export {
  ambientShareOfFullExposure,
  ambientShareOfFullExposureFormula,
} from './exposure/ambient-share-of-full-exposure.formula.ts';
export { ambientShare, ambientShareFormula } from './exposure/ambient-share.formula.ts';
export { ambientUnderexposure, ambientUnderexposureFormula } from './exposure/ambient-underexposure.formula.ts';
export {
  backgroundUnderexposure,
  backgroundUnderexposureFormula,
} from './exposure/background-underexposure.formula.ts';
export { combinedMotionBlur } from './exposure/combined-motion-blur.ts';
export {
  effectiveFNumberFromGuideNumber,
  effectiveFNumberFromGuideNumberFormula,
} from './exposure/effective-f-number-from-guide-number.formula.ts';
export { electrons, electronsFormula } from './exposure/electrons.formula.ts';
export { erf } from './exposure/erf.ts';
export {
  exposureTimeForMotionBlur,
  exposureTimeForMotionBlurFormula,
} from './exposure/exposure-time-for-motion-blur.formula.ts';
export {
  exposureTimeForSubjectSpeed,
  exposureTimeForSubjectSpeedFormula,
} from './exposure/exposure-time-for-subject-speed.formula.ts';
export {
  exposureTimeFromIlluminance,
  exposureTimeFromIlluminanceFormula,
} from './exposure/exposure-time-from-illuminance.formula.ts';
export {
  exposureTimeFromLuminance,
  exposureTimeFromLuminanceFormula,
} from './exposure/exposure-time-from-luminance.formula.ts';
export { exposureValue, exposureValueFormula } from './exposure/exposure-value.formula.ts';
export { fNumberForFlash, fNumberForFlashFormula } from './exposure/f-number-for-flash.formula.ts';
export { flashPowerForFNumber, flashPowerForFNumberFormula } from './exposure/flash-power-for-f-number.formula.ts';
export { flashUnderexposure, flashUnderexposureFormula } from './exposure/flash-underexposure.formula.ts';
export { keeperChance, framesForChance } from './exposure/frames-for-chance.ts';
export {
  illuminanceByInverseSquare,
  illuminanceByInverseSquareFormula,
} from './exposure/illuminance-by-inverse-square.formula.ts';
export { illuminanceFromDisc, illuminanceFromDiscFormula } from './exposure/illuminance-from-disc.formula.ts';
export { isoAtFullWell, isoAtFullWellFormula } from './exposure/iso-at-full-well.formula.ts';
export { isoFromLuminance, isoFromLuminanceFormula } from './exposure/iso-from-luminance.formula.ts';
export { keeperFrames, keeperFramesFormula } from './exposure/keeper-frames.formula.ts';
export { keeperScatter } from './exposure/keeper-scatter.ts';
export { keeperShare, keeperShareFormula } from './exposure/keeper-share.formula.ts';
export { lightingDifference, lightingDifferenceFormula } from './exposure/lighting-difference.formula.ts';
export { lightValue, lightValueFormula } from './exposure/light-value.formula.ts';
export { lensFactor, luminousExposure, type ExposedSurface } from './exposure/luminous-exposure.ts';
export { meteredLuminance, meteredLuminanceFormula } from './exposure/metered-luminance.formula.ts';
export {
  reflectedLightConstants,
  flatReceptorConstants,
  domeReceptorConstants,
  agreedReflectance,
  type MeteringConstant,
} from './exposure/metering-constants.ts';
export { motionBlurOfSubject, motionBlurOfSubjectFormula } from './exposure/motion-blur-of-subject.formula.ts';
export { motionBlurSideways, motionBlurSidewaysFormula } from './exposure/motion-blur-sideways.formula.ts';
export { motionBlurTogether, motionBlurTogetherFormula } from './exposure/motion-blur-together.formula.ts';
export { motionBlurTurning, type TurningCamera } from './exposure/motion-blur-turning.ts';
export {
  motionBlurTurningAboutPupil,
  motionBlurTurningAboutPupilFormula,
} from './exposure/motion-blur-turning-about-pupil.formula.ts';
export {
  motionBlurTurningAboutSensor,
  motionBlurTurningAboutSensorFormula,
} from './exposure/motion-blur-turning-about-sensor.formula.ts';
export {
  photonsPerLuxSecond,
  saturationAtIso1,
  midToneAtIso1,
  midToneExposure,
  saturationExposure,
  assumedPixel,
} from './exposure/photons.ts';
export {
  shareBehindCurtain,
  shutterTimeWithFlash,
  movementUnderFlash,
  type MovementUnderFlash,
} from './exposure/shutter-with-flash.ts';
export { signalToNoise, signalToNoiseFormula } from './exposure/signal-to-noise.formula.ts';
export { slowestExposureTime, slowestExposureTimeFormula } from './exposure/slowest-exposure-time.formula.ts';
export {
  apertureValue,
  fNumberOfApertureValue,
  timeValue,
  exposureTimeOfTimeValue,
  timeForLightLoss,
} from './exposure/stops.ts';
export { stopsInHand, stopsInHandFormula } from './exposure/stops-in-hand.formula.ts';
export { subjectSpeedOfSwing, subjectSpeedOfSwingFormula } from './exposure/subject-speed-of-swing.formula.ts';
export { swingDuring, type SwingInExposure } from './exposure/swing.ts';

export { ballIlluminance, type Ball } from './light/ball-illuminance.ts';
export {
  ballRadiusFromCatchlight,
  ballRadiusFromCatchlightFormula,
} from './light/ball-radius-from-catchlight.formula.ts';
export { brightFilmThickness, brightFilmThicknessFormula } from './light/bright-film-thickness.formula.ts';
export { brightWavelength, brightWavelengthFormula } from './light/bright-wavelength.formula.ts';
export { byAngle } from './light/by-angle.ts';
export {
  cameraFarAhead,
  catchlightOutline,
  catchlightPoint,
  type CameraPlace,
  type CatchlightPoint,
} from './light/catchlight-outline.ts';
export { catchlightSides, type CatchlightSides } from './light/catchlight-sides.ts';
export { catchlightWidthParaxial, catchlightWidthParaxialFormula } from './light/catchlight-width-paraxial.formula.ts';
export { catchlightWidth } from './light/catchlight-width.ts';
export { convexMirrorImage, type BeforeMirror, type MirrorImage } from './light/convex-mirror.ts';
export { diffuserDistance, diffuserDistanceFormula } from './light/diffuser-distance.formula.ts';
export {
  filmReflectanceOfTwoBeams,
  filmReflectanceOfTwoBeamsFormula,
} from './light/film-reflectance-of-two-beams.formula.ts';
export { filmReflectance, filmReflectanceFormula } from './light/film-reflectance.formula.ts';
export { filmPlaceSeen, sizeSeen, type SeenPlace, type TurnedFilm } from './light/film-seen.ts';
export type { DiscSource, FlatSource, RectangleSource } from './light/flat-source.ts';
export { illuminanceFrom } from './light/illuminance-from.ts';
export { daylight, equalEnergy, type Illuminant } from './light/illuminants.ts';
export { lensShadow, lensShadowFormula } from './light/lens-shadow.formula.ts';
export { lightingRatio, lightingRatioFormula } from './light/lighting-ratio.formula.ts';
export { lightsAroundBall, type Arrangement, type LightsGiven } from './light/lights-around-ball.ts';
export { penumbra, penumbraFormula } from './light/penumbra.formula.ts';
export type { SurfaceElement } from './light/polygon-illuminance.ts';
export { refractionAngle, refractionAngleFormula } from './light/refraction-angle.formula.ts';
export {
  mostReflected,
  soapFilmColour,
  soapFilmReflectance,
  type Film,
  type FilmColour,
  type FilmView,
} from './light/soap-film-colour.ts';
export { seenPastEdge, seenPastNeedle, shareBeyond, type LightAbove } from './light/seen-past-edge.ts';
export { sourceAngle, sourceAngleFormula } from './light/source-angle.formula.ts';
export { sourceSizeForMirror, sourceSizeForMirrorFormula } from './light/source-size-for-mirror.formula.ts';
export { encodedSrgb, isShowable, linearSrgb, luminanceOf, showable, type Rgb } from './light/srgb.ts';
export { subjectDepthAslant, subjectDepthAslantFormula } from './light/subject-depth-aslant.formula.ts';
export { surfaceReflectanceP, surfaceReflectancePFormula } from './light/surface-reflectance-p.formula.ts';
export { surfaceReflectanceS, surfaceReflectanceSFormula } from './light/surface-reflectance-s.formula.ts';
export { tristimulus, type Tristimulus } from './light/tristimulus.ts';
export type { Vector } from './light/vector.ts';
export { wedgeFilmThickness, type WedgeFilm } from './light/wedge-film.ts';

export { toDisplay, toneCurve } from './picture/display.ts';
export { estimateScale } from './picture/merge/estimate-scale.ts';
export { Merge } from './picture/merge/merge.ts';
export { resampled } from './picture/merge/resampled.ts';
export { scaleOf } from './picture/merge/scale-of.ts';
export { type StackPlan, stackViews } from './picture/merge/stack-views.ts';
export type { Picture } from './picture/picture.ts';
export { psnr } from './picture/psnr.ts';
export type { RenderOptions } from './picture/render-options.ts';
export { renderPicture, renderSteps } from './picture/render.ts';
export type { Scene, Surface as SceneSurface } from './picture/scene.ts';
export { sharpPicture } from './picture/sharp-picture.ts';
export type { Lamp } from './picture/subjects/lamp.ts';
export type { Lighting, SceneOptions, Subject } from './picture/subjects/subject.ts';
export { subjectOf, subjects } from './picture/subjects/subjects.ts';
export { fieldOf, type View } from './picture/view.ts';

export { chanceFrom } from './chance/chance-from.ts';
export { swayFrom, type Band } from './chance/sway.ts';
export { seedFromText } from './chance/seed-from-text.ts';

export {
  diagnose,
  workedOut,
  type CannotBeTold,
  type Diagnosis,
  type Enquiry,
  type Grounds,
  type Question as AskedOfGiven,
  type WorkedOut,
} from './diagnosis/diagnose.ts';
export { readStatement, type Statement } from './diagnosis/statement.ts';
export { practiceText, readPracticeText, type PracticeAddress, type PracticeReading } from './practice/address.ts';
export {
  markAttempt,
  readAttempt,
  verdictOn,
  type Attempt,
  type NotReady,
  type ReadyAnswer,
  type Verdict,
} from './practice/answer.ts';
export {
  choiceFamily,
  numberFamily,
  type ProblemFamily,
  type NumberPlan,
  type NumberFamily,
  type ChoicePlan,
  type ChoiceFamily,
} from './practice/family.ts';
export { drawProblem, type Problem } from './practice/problem.ts';
export { drawFrom, type Draw } from './practice/random.ts';
export { isProgress, progressAfter, type Progress, type PracticeEvent } from './practice/score.ts';
export { isSeed, mostSeed, nextSeed } from './practice/seed.ts';
export { reviewAfter, nextKind, type ReviewRecord, type ReviewAnswer } from './practice/review.ts';
export { sessionBegun, sessionAnswered, sessionGoneOn, type Review, type Session } from './practice/review-session.ts';
export { drawVersions, type SheetKind, type SheetProblem } from './practice/versions.ts';
export { workingNumbers, type WorkedStep } from './practice/working.ts';
export type { Known } from './practice/text.ts';

export { OutOfRange } from './quantity/errors.ts';
export { expectedWords, type Range } from './quantity/expected.ts';
export { evaluateFormula, type Formula, type Named } from './quantity/formula.ts';
export { glossary, glossaryEntry, texOf, type GlossaryEntry } from './quantity/glossary.ts';
export { nameInFull, partIndex, partOf } from './quantity/part.ts';
export {
  exactFNumber,
  exactShutterTime,
  fNumberSeries,
  fullStopFNumbers,
  nominalFNumber,
  nominalShutterTime,
  shutterTimeSeries,
} from './quantity/nominal.ts';
export { plainNumber, readPlainNumber } from './quantity/plain-number.ts';
export { printNumber, printQuantity, type PrintedNumber, type PrintOptions } from './quantity/print.ts';
export { readQuantity, type Reading } from './quantity/read.ts';
export {
  nearestRoot,
  onlyRoot,
  reachOfFormula,
  solveFor,
  type Question,
  type Root,
  type Solution,
  type Solvable,
  type Span,
} from './quantity/solve.ts';
export type { Branch } from './quantity/solve-reach.ts';
export { NoRoot, NotGiven, NotInFormula, SeveralRoots, type Reach } from './quantity/solve-refusals.ts';
export { unitWorth } from './quantity/units.ts';
export {
  isQuantityId,
  quantityIds,
  quantityOf,
  vocabulary,
  type Quantity,
  type QuantityName,
  type BaseUnit,
  type QuantityId,
} from './quantity/vocabulary.ts';

export { assembleRig } from './rig/assemble.ts';
export { type KnownLens, type KnownNumber, type PossibleLenses } from './rig/assumed/known-lens.ts';
export { possibleLenses } from './rig/assumed/possible-lenses.ts';
export { spanOver, type AnswerSpan } from './rig/assumed/span-over.ts';
export { cardinalPoints, rigMatrix, type CardinalPoints } from './rig/cardinal-points.ts';
export {
  closeUpPowerForMagnification,
  closeUpPowerForMagnificationFormula,
} from './rig/close-up-power-for-magnification.formula.ts';
export { colourBlur, colourBlurFormula } from './rig/colour-blur.formula.ts';
export { colourSpreadAtSensor, colourSpreadAtSensorFormula } from './rig/colour-spread-at-sensor.formula.ts';
export {
  colourSpreadOfCloseUpLens,
  colourSpreadOfCloseUpLensFormula,
} from './rig/colour-spread-of-close-up-lens.formula.ts';
export {
  effectiveFNumberOfObjective,
  effectiveFNumberOfObjectiveFormula,
} from './rig/effective-f-number-of-objective.formula.ts';
export {
  effectiveFNumberOfReversedLens,
  effectiveFNumberOfReversedLensFormula,
} from './rig/effective-f-number-of-reversed-lens.formula.ts';
export {
  effectiveFNumberWithCloseUpLens,
  effectiveFNumberWithCloseUpLensFormula,
} from './rig/effective-f-number-with-close-up-lens.formula.ts';
export {
  effectiveFNumberWithConverter,
  effectiveFNumberWithConverterFormula,
} from './rig/effective-f-number-with-converter.formula.ts';
export {
  entrancePupilDistanceOfReversedLens,
  entrancePupilDistanceOfReversedLensFormula,
} from './rig/entrance-pupil-distance-of-reversed-lens.formula.ts';
export {
  entrancePupilOfReversedLens,
  entrancePupilOfReversedLensFormula,
} from './rig/entrance-pupil-of-reversed-lens.formula.ts';
export {
  extensionForReversedLens,
  extensionForReversedLensFormula,
} from './rig/extension-for-reversed-lens.formula.ts';
export { extensionFor, focusMagnificationFor, focusRange, type FocusRange } from './rig/focusing.ts';
export { fitDistances, type JudgedDistance, type LensByDistances } from './rig/fit/fit-distances.ts';
export { fitLens, type FitOptions } from './rig/fit/fit-lens.ts';
export { fitSettings, type JudgedPhotograph, type LensOfSettings, type SetPhotograph } from './rig/fit/fit-settings.ts';
export { leftOut, type LeftOut } from './rig/fit/left-out.ts';
export { parallelLines, type GroupedPoint, type ParallelLines } from './rig/fit/parallel-lines.ts';
export { magnificationErrors } from './rig/fit/reading-errors.ts';
export { unitError } from './rig/fit/reading-errors.ts';
export { studentTails } from './rig/fit/student-tails.ts';
export {
  lensFitWords,
  type ContradictoryLens,
  type Estimate,
  type FittedLens,
  type LensFit,
  type UntoldLens,
} from './rig/fit/lens-fit.ts';
export { FaultyPhotograph, type MeasuredPhotograph, type RulerPhotograph } from './rig/fit/photograph.ts';
export { pupilMagnificationByDiameters, type PupilDiameters } from './rig/fit/pupil-magnification-by-diameters.ts';
export { straightLine, type StraightLine, type WeightedPoint } from './rig/fit/straight-line.ts';
export { ImpossibleChain } from './rig/impossible-chain.ts';
export { conesByFocusing, type ConesByFocusing } from './rig/cones-by-focusing.ts';
export { conesOfChain } from './rig/cones-of-chain.ts';
export { type KitChain } from './rig/kit/built-chain.ts';
export { chainCount } from './rig/kit/chain-count.ts';
export { gainOfPart, type PartGain } from './rig/kit/gain-of-part.ts';
export { FaultyKit, type KitRow, type KitSubject } from './rig/kit/kit.ts';
export { kitReach, kitReachByFront, type ChainReach } from './rig/kit/reach.ts';
export { searchKit } from './rig/kit/search-kit.ts';
export type { ChainJudgement, KitSearch } from './rig/kit/search-sound-kit.ts';
export { depthLeftByDiffraction } from './wave/depth-left-by-diffraction.ts';
export { finestEffectiveFNumber, finestEffectiveFNumberFormula } from './wave/finest-effective-f-number.formula.ts';
export { verdictWords, type Verdict as KitVerdict } from './rig/kit/verdict.ts';
export {
  internalFocusBrackets,
  type Bracket as FocusBracket,
  type InternalFocusBrackets,
} from './rig/internal-focus-brackets.ts';
export { closestMagnification, lensInUse, stateAt } from './rig/lens-in-use.ts';
export { type Focusing, type FocusState, type Lens, type LensInUse } from './rig/lens.ts';
export {
  magnificationOfCloseUpLens,
  magnificationOfCloseUpLensFormula,
} from './rig/magnification-of-close-up-lens.formula.ts';
export {
  magnificationOfCoupledLenses,
  magnificationOfCoupledLensesFormula,
} from './rig/magnification-of-coupled-lenses.formula.ts';
export {
  magnificationOfInfinityObjective,
  magnificationOfInfinityObjectiveFormula,
} from './rig/magnification-of-infinity-objective.formula.ts';
export {
  magnificationOfReversedLens,
  magnificationOfReversedLensFormula,
} from './rig/magnification-of-reversed-lens.formula.ts';
export {
  magnificationWithCloseUpLens,
  magnificationWithCloseUpLensFormula,
  reachOf,
} from './rig/magnification-with-close-up-lens.formula.ts';
export {
  magnificationWithConverter,
  magnificationWithConverterFormula,
} from './rig/magnification-with-converter.formula.ts';
export {
  magnificationWithRingBehindConverter,
  magnificationWithRingBehindConverterFormula,
} from './rig/magnification-with-ring-behind-converter.formula.ts';
export {
  converterFactorWithRingBehind,
  converterFactorWithRingBehindFormula,
} from './rig/converter-factor-with-ring-behind.formula.ts';
export {
  effectiveFNumberOfCoupledLenses,
  effectiveFNumberOfCoupledLensesFormula,
} from './rig/effective-f-number-of-coupled-lenses.formula.ts';
export {
  effectiveFNumberOfObjectiveOnLens,
  effectiveFNumberOfObjectiveOnLensFormula,
} from './rig/effective-f-number-of-objective-on-lens.formula.ts';
export {
  magnificationWithRingsAroundConverter,
  magnificationWithRingsAroundConverterFormula,
} from './rig/magnification-with-rings-around-converter.formula.ts';
export {
  workingDistanceWithConverter,
  workingDistanceWithConverterFormula,
} from './rig/working-distance-with-converter.formula.ts';
export { objectivePoints, type ObjectivePoints } from './rig/objective-points.ts';
export { type Part, type Objective } from './rig/part.ts';
export { rigPositions, type PlacedPart, type RigPositions } from './rig/positions.ts';
export { type ElementPoints, type PlacedPupil, type PrincipalPoints } from './rig/element-points.ts';
export { glassPositions, glassRays, type PlacedGlass, type PlacedRay } from './rig/glass-positions.ts';
export { constructionRays } from './rig/construction-rays.ts';
export { rayThrough, type RayPath, type RayPoint } from './rig/ray-paths.ts';
export { rigSpans, type AxialSpan } from './rig/spans.ts';
export { type ApertureControl, type Element, type PartPlace, type Rig } from './rig/rig.ts';
export {
  exactRay,
  heightAt,
  outline,
  type OpenStop,
  type Place,
  type RayLoss,
  type TracedRay,
} from './rig/exact-trace.ts';
export { FaultyPrescription, requirePrescription } from './rig/faulty-prescription.ts';
export { lensOfPrescription } from './rig/lens-of-prescription.ts';
export { imageThrough, type GlassImage } from './rig/image-through.ts';
export { glassPoints, glassPupils, type GlassPoints, type GlassPupils } from './rig/paraxial-trace.ts';
export { prescriptionInUse, type PrescriptionInUse } from './rig/prescription-in-use.ts';
export type { FocusSetting, Prescription, Surface } from './rig/prescription.ts';
export { surfacesAt } from './rig/surfaces-at.ts';
export { rayFan, shareThrough } from './rig/ray-fan.ts';
export { reversedPrescription } from './rig/reversed-prescription.ts';
export { solveRig } from './rig/solve.ts';
export { sharpPlaneWords, type RigAtInfinity, type SharpRig, type SolvedRig } from './rig/solved-rig.ts';
export { stopsOf, type Stop } from './rig/stops.ts';
export { thinConverter, type ThinConverter } from './rig/thin-converter.ts';
export {
  workingDistanceOfCloseUpLens,
  workingDistanceOfCloseUpLensFormula,
} from './rig/working-distance-of-close-up-lens.formula.ts';
export {
  workingDistanceOfRackedOutReversedLens,
  workingDistanceOfRackedOutReversedLensFormula,
} from './rig/working-distance-of-racked-out-reversed-lens.formula.ts';
export {
  workingDistanceOfReversedLens,
  workingDistanceOfReversedLensFormula,
} from './rig/working-distance-of-reversed-lens.formula.ts';
export {
  workingDistanceWithCloseUpLens,
  workingDistanceWithCloseUpLensFormula,
} from './rig/working-distance-with-close-up-lens.formula.ts';

export { firstDarkRing, airyDiameter, airyDiameterFormula } from './wave/airy-diameter.formula.ts';
export { airyIntensity, encircledEnergy, opticalRadius, type InAiryPattern } from './wave/airy-pattern.ts';
export { airyProfile, type RadialProfile } from './wave/airy-profile.ts';
export { airyRings, type AiryRings } from './wave/airy-rings.ts';
export { airyTable, type AiryTable } from './wave/airy-table.ts';
export { besselJ0, besselJ1 } from './wave/bessel.ts';
export { balancedFNumber, balancedFNumberFormula } from './wave/balanced-f-number.formula.ts';
export { bestEffectiveFNumber, bestEffectiveFNumberFormula } from './wave/best-effective-f-number.formula.ts';
export { contrastAtPlace, type PlaceInDepth } from './wave/contrast-at-place.ts';
export { bestEffectiveFNumberOfCone } from './wave/best-effective-f-number-of-cone.ts';
export {
  bestFNumber,
  worstContrast,
  type BestFNumber,
  type DepthAtFrequency,
  type WorstContrast,
} from './wave/best-f-number.ts';
export { blurDiscTransfer } from './wave/blur-disc-transfer.ts';
export { contrast, contrastFormula } from './wave/contrast.formula.ts';
export { cutoffFrequency, cutoffFrequencyFormula } from './wave/cutoff-frequency.formula.ts';
export {
  defocusAberrationOfDepth,
  defocusAberrationOfDepthFormula,
} from './wave/defocus-aberration-of-depth.formula.ts';
export { defocusAberration, defocusAberrationFormula } from './wave/defocus-aberration.formula.ts';
export { energyProfile, type EnergyProfile } from './wave/energy-profile.ts';
export { nyquistFrequency, nyquistFrequencyFormula } from './wave/nyquist-frequency.formula.ts';
export { opticalTransfer } from './wave/optical-transfer.ts';
export { photopicLight, photopicPeak } from './wave/photopic-light.ts';
export { photopicEnergyProfile, photopicProfile } from './wave/photopic-spread.ts';
export { photopicTransfer } from './wave/photopic-transfer.ts';
export { pixelLight } from './wave/pixel-light.ts';
export { pixelTransfer } from './wave/pixel-transfer.ts';
export { pointSpreadProfile, strehlRatio, type InPointSpread } from './wave/point-spread.ts';
export { stoppedDownAberration, type Pupil } from './wave/pupil.ts';
export {
  spatialFrequencyOfCircle,
  spatialFrequencyOfCircleFormula,
} from './wave/spatial-frequency-of-circle.formula.ts';
export { subjectResolution, type SubjectResolution } from './wave/subject-resolution.ts';
export { correctedExposureTime, correctedExposureTimeFormula } from './exposure/corrected-exposure-time.formula.ts';
export {
  fNumberForEffectiveFNumber,
  fNumberForEffectiveFNumberFormula,
} from './gaussian/f-number-for-effective-f-number.formula.ts';
export { finderLoss, finderLossFormula } from './gaussian/finder-loss.formula.ts';
export { type CombFit } from './ruler/comb-fit.ts';
export { type CombShape } from './ruler/comb.ts';
export { contrastAlong, type LocalContrast } from './ruler/contrast-along.ts';
export {
  depthByContrast,
  noDepthWords,
  type DepthByContrast,
  type NoDepth,
  type SlantedMarks,
} from './ruler/depth-by-contrast.ts';
export { findComb, noCombWords, type FoundComb, type NoComb } from './ruler/find-comb.ts';
export { measureMarks, type MeasuredMarks } from './ruler/measure-marks.ts';
export { type GreyPhotograph, type RulerLine } from './ruler/photograph.ts';
export { placesOfMarks } from './ruler/places-of-marks.ts';
export { offAxisOf, rulerScale, type RulerScale, type ScaleOfMarks } from './ruler/ruler-scale.ts';
export { twoPlacesScale, type TwoPlaces } from './ruler/two-places.ts';
