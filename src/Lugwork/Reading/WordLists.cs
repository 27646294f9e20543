using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Words that one rule of the reader asks for: the rows of <c>Words/lists.txt</c>, each named by its rule.</summary>
internal static class WordLists
{
    private static readonly Dictionary<string, FrozenSet<string>> All = WordFile.Read()["lists"].Select(r => r.Split('\t')).ToDictionary(r => r[0], r => r[1].Split(", ").ToFrozenSet(StringComparer.Ordinal), StringComparer.Ordinal);

    public static readonly FrozenSet<string> CompactPairsIsAxleWord = All[nameof(CompactPairsIsAxleWord)];

    public static readonly FrozenSet<string> CompactPairsIsBehindEnd = All[nameof(CompactPairsIsBehindEnd)];

    public static readonly FrozenSet<string> CompactPairsIsBolt = All[nameof(CompactPairsIsBolt)];

    public static readonly FrozenSet<string> CompactPairsIsEndWord = All[nameof(CompactPairsIsEndWord)];

    public static readonly FrozenSet<string> CompactPairsIsWidthWord = All[nameof(CompactPairsIsWidthWord)];

    public static readonly FrozenSet<string> CompactWordsIsBehindRim = All[nameof(CompactWordsIsBehindRim)];

    public static readonly FrozenSet<string> CompactWordsIsOfMount = All[nameof(CompactWordsIsOfMount)];

    public static readonly FrozenSet<string> CompactWordsIsRearInItalian = All[nameof(CompactWordsIsRearInItalian)];

    public static readonly FrozenSet<string> CompactWordsIsRearInItalian2 = All[nameof(CompactWordsIsRearInItalian2)];

    public static readonly FrozenSet<string> CompactWordsIsSupplied = All[nameof(CompactWordsIsSupplied)];

    public static readonly FrozenSet<string> CompactWordsIsTravel = All[nameof(CompactWordsIsTravel)];

    public static readonly FrozenSet<string> CompactWordsIsTravel2 = All[nameof(CompactWordsIsTravel2)];

    public static readonly FrozenSet<string> CompactWordsWhole = All[nameof(CompactWordsWhole)];

    public static readonly FrozenSet<string> CompactWordsWhole2 = All[nameof(CompactWordsWhole2)];

    public static readonly FrozenSet<string> CompactWordsWhole3 = All[nameof(CompactWordsWhole3)];

    public static readonly FrozenSet<string> ConjunctionsIsArticle = All[nameof(ConjunctionsIsArticle)];

    public static readonly FrozenSet<string> ConjunctionsIsArticle2 = All[nameof(ConjunctionsIsArticle2)];

    public static readonly FrozenSet<string> EndCapPairsIsDenied = All[nameof(EndCapPairsIsDenied)];

    public static readonly FrozenSet<string> FillersIsFollowed = All[nameof(FillersIsFollowed)];

    public static readonly FrozenSet<string> ForeignPartIsWhatItGoesTo = All[nameof(ForeignPartIsWhatItGoesTo)];

    public static readonly FrozenSet<string> HalfWordsAdd = All[nameof(HalfWordsAdd)];

    public static readonly FrozenSet<string> HeadingsCount = All[nameof(HeadingsCount)];

    public static readonly FrozenSet<string> HeadingsCount2 = All[nameof(HeadingsCount2)];

    public static readonly FrozenSet<string> HeadingsMend = All[nameof(HeadingsMend)];

    public static readonly FrozenSet<string> ItemCutterBehind = All[nameof(ItemCutterBehind)];

    public static readonly FrozenSet<string> ItemCutterBehind2 = All[nameof(ItemCutterBehind2)];

    public static readonly FrozenSet<string> ItemCutterIsEnglishBeforeArticle = All[nameof(ItemCutterIsEnglishBeforeArticle)];

    public static readonly FrozenSet<string> ItemCutterIsMetre = All[nameof(ItemCutterIsMetre)];

    public static readonly FrozenSet<string> ItemCutterIsShortened = All[nameof(ItemCutterIsShortened)];

    public static readonly FrozenSet<string> ItemCutterNumbers = All[nameof(ItemCutterNumbers)];

    public static readonly FrozenSet<string> ItemNotesAge = All[nameof(ItemNotesAge)];

    public static readonly FrozenSet<string> ItemNotesIsDecade = All[nameof(ItemNotesIsDecade)];

    public static readonly FrozenSet<string> ItemNotesIsTool = All[nameof(ItemNotesIsTool)];

    public static readonly FrozenSet<string> ItemNotesManifold = All[nameof(ItemNotesManifold)];

    public static readonly FrozenSet<string> ItemNotesPosteriore = All[nameof(ItemNotesPosteriore)];

    public static readonly FrozenSet<string> ItemNotesPosteriore2 = All[nameof(ItemNotesPosteriore2)];

    public static readonly FrozenSet<string> ItemNotesQuantity = All[nameof(ItemNotesQuantity)];

    public static readonly FrozenSet<string> LineTongueIsEnglish = All[nameof(LineTongueIsEnglish)];

    public static readonly FrozenSet<string> LineTongueIsEnglish2 = All[nameof(LineTongueIsEnglish2)];

    public static readonly FrozenSet<string> LineTongueIsGerman = All[nameof(LineTongueIsGerman)];

    public static readonly FrozenSet<string> PartsTogetherIsAnd = All[nameof(PartsTogetherIsAnd)];

    public static readonly FrozenSet<string> PlacedWordsIsBehindPreposition = All[nameof(PlacedWordsIsBehindPreposition)];

    public static readonly FrozenSet<string> PlacedWordsIsBehindPreposition2 = All[nameof(PlacedWordsIsBehindPreposition2)];

    public static readonly FrozenSet<string> PlacedWordsIsOfBicycleInSpanish = All[nameof(PlacedWordsIsOfBicycleInSpanish)];

    public static readonly FrozenSet<string> PlacedWordsIsOfBicycleInSpanish2 = All[nameof(PlacedWordsIsOfBicycleInSpanish2)];

    public static readonly FrozenSet<string> PlacedWordsIsEndOfFrame = All[nameof(PlacedWordsIsEndOfFrame)];

    public static readonly FrozenSet<string> PlacedWordsIsOfThread = All[nameof(PlacedWordsIsOfThread)];

    public static readonly FrozenSet<string> PlacedWordsIsOfThread2 = All[nameof(PlacedWordsIsOfThread2)];
    public static readonly FrozenSet<string> PlacedWordsIsOfRoad = All[nameof(PlacedWordsIsOfRoad)];

    public static readonly FrozenSet<string> RowWordsIsGermanPart = All[nameof(RowWordsIsGermanPart)];

    public static readonly FrozenSet<string> SaidTwiceIsMeasure = All[nameof(SaidTwiceIsMeasure)];

    public static readonly FrozenSet<string> SameSizeIsOfSteerer = All[nameof(SameSizeIsOfSteerer)];

    public static readonly FrozenSet<string> ScanAccountedIsArticle = All[nameof(ScanAccountedIsArticle)];

    public static readonly FrozenSet<string> ScanAccountedIsEndSprocket = All[nameof(ScanAccountedIsEndSprocket)];

    public static readonly FrozenSet<string> ScanAccountedIsFromToTeeth = All[nameof(ScanAccountedIsFromToTeeth)];

    public static readonly FrozenSet<string> ScanAccountedIsHolesOfWheel = All[nameof(ScanAccountedIsHolesOfWheel)];

    public static readonly FrozenSet<string> ScanAccountedIsOfThisPart = All[nameof(ScanAccountedIsOfThisPart)];

    public static readonly FrozenSet<string> ScanAccountedWheelsIsSizeOfWheel = All[nameof(ScanAccountedWheelsIsSizeOfWheel)];

    public static readonly FrozenSet<string> ScanAxlesIsTurnsBehind = All[nameof(ScanAxlesIsTurnsBehind)];

    public static readonly FrozenSet<string> ScanBarsIsRiseWord = All[nameof(ScanBarsIsRiseWord)];

    public static readonly FrozenSet<string> ScanBearingsBothAngles = All[nameof(ScanBearingsBothAngles)];

    public static readonly FrozenSet<string> ScanBearingsBothAngles2 = All[nameof(ScanBearingsBothAngles2)];

    public static readonly FrozenSet<string> ScanBesideIsBesidePedals = All[nameof(ScanBesideIsBesidePedals)];

    public static readonly FrozenSet<string> ScanBesideIsOfSplines = All[nameof(ScanBesideIsOfSplines)];

    public static readonly FrozenSet<string> ScanBesideIsOnlyHydraulic = All[nameof(ScanBesideIsOnlyHydraulic)];

    public static readonly FrozenSet<string> ScanBesideIsSide = All[nameof(ScanBesideIsSide)];

    public static readonly FrozenSet<string> ScanBodiesIsOfEngagement = All[nameof(ScanBodiesIsOfEngagement)];

    public static readonly FrozenSet<string> ScanBossesIsSmallJoin = All[nameof(ScanBossesIsSmallJoin)];

    public static readonly FrozenSet<string> ScanBossesReadBosses = All[nameof(ScanBossesReadBosses)];

    public static readonly FrozenSet<string> ScanBottomBracketFitsShells = All[nameof(ScanBottomBracketFitsShells)];

    public static readonly FrozenSet<string> ScanBracketIsOfMaker = All[nameof(ScanBracketIsOfMaker)];

    public static readonly FrozenSet<string> ScanBrakeReachIsForBothRims = All[nameof(ScanBrakeReachIsForBothRims)];

    public static readonly FrozenSet<string> ScanBrakeReachIsRimMaterial = All[nameof(ScanBrakeReachIsRimMaterial)];

    public static readonly FrozenSet<string> ScanBrakeReachIsTurnOfPlate = All[nameof(ScanBrakeReachIsTurnOfPlate)];

    public static readonly FrozenSet<string> ScanBrakeReachPadsBehindColon = All[nameof(ScanBrakeReachPadsBehindColon)];

    public static readonly FrozenSet<string> ScanBrakeReachPadsBehindColon2 = All[nameof(ScanBrakeReachPadsBehindColon2)];

    public static readonly FrozenSet<string> ScanBrakesIsDistance = All[nameof(ScanBrakesIsDistance)];

    public static readonly FrozenSet<string> ScanBrakesIsNutWithin = All[nameof(ScanBrakesIsNutWithin)];

    public static readonly FrozenSet<string> ScanBrakesIsNativeSize = All[nameof(ScanBrakesIsNativeSize)];

    public static readonly FrozenSet<string> ScanBrakesIsOfAnchor = All[nameof(ScanBrakesIsOfAnchor)];

    public static readonly FrozenSet<string> ScanBrakesIsReachClass = All[nameof(ScanBrakesIsReachClass)];

    public static readonly FrozenSet<string> ScanBrakesReadBrakeBolt = All[nameof(ScanBrakesReadBrakeBolt)];

    public static readonly FrozenSet<string> ScanBrakesReadBrakeBolt2 = All[nameof(ScanBrakesReadBrakeBolt2)];

    public static readonly FrozenSet<string> ScanCassettesExcludesOthers = All[nameof(ScanCassettesExcludesOthers)];

    public static readonly FrozenSet<string> ScanCoversIsCables = All[nameof(ScanCoversIsCables)];

    public static readonly FrozenSet<string> ScanCoversIsPlace = All[nameof(ScanCoversIsPlace)];

    public static readonly FrozenSet<string> ScanCupsBoth = All[nameof(ScanCupsBoth)];

    public static readonly FrozenSet<string> ScanCupsSaysBothCups = All[nameof(ScanCupsSaysBothCups)];

    public static readonly FrozenSet<string> ScanDoubtsNotYet = All[nameof(ScanDoubtsNotYet)];

    public static readonly FrozenSet<string> ScanCupsSizeWithCup = All[nameof(ScanCupsSizeWithCup)];

    public static readonly FrozenSet<string> ScanDoubtfulFiguresIsLettered = All[nameof(ScanDoubtfulFiguresIsLettered)];

    public static readonly FrozenSet<string> ScanDoubtfulFiguresIsLettered2 = All[nameof(ScanDoubtfulFiguresIsLettered2)];

    public static readonly FrozenSet<string> ScanDoubtfulFiguresIsShortWord = All[nameof(ScanDoubtfulFiguresIsShortWord)];

    public static readonly FrozenSet<string> ScanDoubtsIsAdapterOfCaliper = All[nameof(ScanDoubtsIsAdapterOfCaliper)];

    public static readonly FrozenSet<string> ScanDoubtsIsAskedOfBuyer = All[nameof(ScanDoubtsIsAskedOfBuyer)];

    public static readonly FrozenSet<string> ScanDoubtsIsKitOfBody = All[nameof(ScanDoubtsIsKitOfBody)];

    public static readonly FrozenSet<string> ScanDoubtsIsMeasureWord = All[nameof(ScanDoubtsIsMeasureWord)];

    public static readonly FrozenSet<string> ScanDoubtsIsOfHanger = All[nameof(ScanDoubtsIsOfHanger)];

    public static readonly FrozenSet<string> ScanDoubtsIsOfUnknown = All[nameof(ScanDoubtsIsOfUnknown)];

    public static readonly FrozenSet<string> ScanDoubtsOpensConsequence = All[nameof(ScanDoubtsOpensConsequence)];

    public static readonly FrozenSet<string> ScanDoubtsReason = All[nameof(ScanDoubtsReason)];

    public static readonly FrozenSet<string> ScanEndBeyondIsAndWord = All[nameof(ScanEndBeyondIsAndWord)];

    public static readonly FrozenSet<string> ScanEndBeyondIsHeldAlone = All[nameof(ScanEndBeyondIsHeldAlone)];

    public static readonly FrozenSet<string> ScanEndBeyondIsJoiningWord = All[nameof(ScanEndBeyondIsJoiningWord)];

    public static readonly FrozenSet<string> ScanForkByHandIsGermanOfFork = All[nameof(ScanForkByHandIsGermanOfFork)];

    public static readonly FrozenSet<string> ScanForkByHandSteererByDiameter = All[nameof(ScanForkByHandSteererByDiameter)];

    public static readonly FrozenSet<string> ScanForkByHandTravelByStroke = All[nameof(ScanForkByHandTravelByStroke)];

    public static readonly FrozenSet<string> ScanFrameCrownSaid = All[nameof(ScanFrameCrownSaid)];

    public static readonly FrozenSet<string> ScanFrameIsOfSteererSaid = All[nameof(ScanFrameIsOfSteererSaid)];

    public static readonly FrozenSet<string> ScanFrameOpensToOneSide = All[nameof(ScanFrameOpensToOneSide)];

    public static readonly FrozenSet<string> ScanGuidesIsMountedOn = All[nameof(ScanGuidesIsMountedOn)];

    public static readonly FrozenSet<string> ScanGuidesIsMountedOn2 = All[nameof(ScanGuidesIsMountedOn2)];

    public static readonly FrozenSet<string> ScanHangersIsPitchWord = All[nameof(ScanHangersIsPitchWord)];

    public static readonly FrozenSet<string> ScanHeadTakesCassette = All[nameof(ScanHeadTakesCassette)];

    public static readonly FrozenSet<string> ScanHolesIsCountOfHoles = All[nameof(ScanHolesIsCountOfHoles)];

    public static readonly FrozenSet<string> ScanHolesIsPerSide = All[nameof(ScanHolesIsPerSide)];

    public static readonly FrozenSet<string> ScanHubApartIsDiameterWord = All[nameof(ScanHubApartIsDiameterWord)];

    public static readonly FrozenSet<string> ScanHubApartIsHubWord = All[nameof(ScanHubApartIsHubWord)];

    public static readonly FrozenSet<string> ScanHubApartIsOfWheel = All[nameof(ScanHubApartIsOfWheel)];

    public static readonly FrozenSet<string> ScanHubClauseIsAxleFigure = All[nameof(ScanHubClauseIsAxleFigure)];

    public static readonly FrozenSet<string> ScanHubClauseIsWidthOfHub = All[nameof(ScanHubClauseIsWidthOfHub)];

    public static readonly FrozenSet<string> ScanHubMarksOnlyHub = All[nameof(ScanHubMarksOnlyHub)];

    public static readonly FrozenSet<string> ScanInsertionInsertionOfTwo = All[nameof(ScanInsertionInsertionOfTwo)];

    public static readonly FrozenSet<string> ScanInsertionIsDepthNoun = All[nameof(ScanInsertionIsDepthNoun)];

    public static readonly FrozenSet<string> ScanInsertionIsGoingIn = All[nameof(ScanInsertionIsGoingIn)];

    public static readonly FrozenSet<string> ScanLeftFiguresIsAccounted = All[nameof(ScanLeftFiguresIsAccounted)];

    public static readonly FrozenSet<string> ScanLeftFiguresIsOfSet = All[nameof(ScanLeftFiguresIsOfSet)];

    public static readonly FrozenSet<string> ScanLeftFiguresIsOfSet2 = All[nameof(ScanLeftFiguresIsOfSet2)];

    public static readonly FrozenSet<string> ScanLeftFiguresIsOfSomethingElse = All[nameof(ScanLeftFiguresIsOfSomethingElse)];

    public static readonly FrozenSet<string> ScanLimitsTogether = All[nameof(ScanLimitsTogether)];

    public static readonly FrozenSet<string> ScanMassesIsBicycle = All[nameof(ScanMassesIsBicycle)];

    public static readonly FrozenSet<string> ScanMassesIsListOfSum = All[nameof(ScanMassesIsListOfSum)];

    public static readonly FrozenSet<string> ScanMassesIsLuggage = All[nameof(ScanMassesIsLuggage)];

    public static readonly FrozenSet<string> ScanMassesSumIn = All[nameof(ScanMassesSumIn)];

    public static readonly FrozenSet<string> ScanMaterialsIsFinish = All[nameof(ScanMaterialsIsFinish)];

    public static readonly FrozenSet<string> ScanMaterialsOfWhole = All[nameof(ScanMaterialsOfWhole)];

    public static readonly FrozenSet<string> ScanMeasuredIsPlainTelling = All[nameof(ScanMeasuredIsPlainTelling)];

    public static readonly FrozenSet<string> ScanMostSprocketIsOnlyLimit = All[nameof(ScanMostSprocketIsOnlyLimit)];

    public static readonly FrozenSet<string> ScanMostSprocketIsOnlyLimit2 = All[nameof(ScanMostSprocketIsOnlyLimit2)];

    public static readonly FrozenSet<string> ScanMountAmongIsMadeFor = All[nameof(ScanMountAmongIsMadeFor)];

    public static readonly FrozenSet<string> ScanMountRotorsIsBrakeOfFork = All[nameof(ScanMountRotorsIsBrakeOfFork)];

    public static readonly FrozenSet<string> ScanMountRotorsIsDirectWord = All[nameof(ScanMountRotorsIsDirectWord)];

    public static readonly FrozenSet<string> ScanMountRotorsIsOfMount = All[nameof(ScanMountRotorsIsOfMount)];

    public static readonly FrozenSet<string> ScanMountRotorsRotorsOfFork = All[nameof(ScanMountRotorsRotorsOfFork)];

    public static readonly FrozenSet<string> ScanMountsToldIsAloneBesideSmall = All[nameof(ScanMountsToldIsAloneBesideSmall)];

    public static readonly FrozenSet<string> ScanMountsToldIsOfOtherOne = All[nameof(ScanMountsToldIsOfOtherOne)];

    public static readonly FrozenSet<string> ScanMountsToldRotorOfThatOne = All[nameof(ScanMountsToldRotorOfThatOne)];

    public static readonly FrozenSet<string> ScanMountsToldRotorOfThatOne2 = All[nameof(ScanMountsToldRotorOfThatOne2)];

    public static readonly FrozenSet<string> ScanOfFigureIsOfFigure = All[nameof(ScanOfFigureIsOfFigure)];

    public static readonly FrozenSet<string> ScanOtherMeaningsHasOtherTaper = All[nameof(ScanOtherMeaningsHasOtherTaper)];

    public static readonly FrozenSet<string> ScanOtherMeaningsHasSleeveBehind = All[nameof(ScanOtherMeaningsHasSleeveBehind)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsHeightWord = All[nameof(ScanOtherMeaningsIsHeightWord)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsHubOfOther = All[nameof(ScanOtherMeaningsIsHubOfOther)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsInsideOfOther = All[nameof(ScanOtherMeaningsIsInsideOfOther)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsInsideOfPost = All[nameof(ScanOtherMeaningsIsInsideOfPost)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsLipsOfOther = All[nameof(ScanOtherMeaningsIsLipsOfOther)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsLocknut = All[nameof(ScanOtherMeaningsIsLocknut)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsOfRebuilding = All[nameof(ScanOtherMeaningsIsOfRebuilding)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsPlaceOfDamage = All[nameof(ScanOtherMeaningsIsPlaceOfDamage)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsRise = All[nameof(ScanOtherMeaningsIsRise)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsWeak = All[nameof(ScanOtherMeaningsIsWeak)];

    public static readonly FrozenSet<string> ScanOtherMeaningsIsWordOfOther = All[nameof(ScanOtherMeaningsIsWordOfOther)];

    public static readonly FrozenSet<string> ScanOtherMeaningsOtherMeaning = All[nameof(ScanOtherMeaningsOtherMeaning)];

    public static readonly FrozenSet<string> ScanOtherMeaningsOtherMeaning2 = All[nameof(ScanOtherMeaningsOtherMeaning2)];

    public static readonly FrozenSet<string> ScanOtherMeaningsOtherMeaning3 = All[nameof(ScanOtherMeaningsOtherMeaning3)];

    public static readonly FrozenSet<string> ScanOtherMeaningsOtherMeaning4 = All[nameof(ScanOtherMeaningsOtherMeaning4)];

    public static readonly FrozenSet<string> ScanOtherMeaningsOtherMeanings = All[nameof(ScanOtherMeaningsOtherMeanings)];

    public static readonly FrozenSet<string> ScanOtherThingIsSizeOfOther = All[nameof(ScanOtherThingIsSizeOfOther)];

    public static readonly FrozenSet<string> ScanPostLengthsIsLengthWord = All[nameof(ScanPostLengthsIsLengthWord)];

    public static readonly FrozenSet<string> ScanPostLengthsIsMeasured = All[nameof(ScanPostLengthsIsMeasured)];

    public static readonly FrozenSet<string> ScanPostsIsOfBarePost = All[nameof(ScanPostsIsOfBarePost)];

    public static readonly FrozenSet<string> ScanPostsOtherOfOval = All[nameof(ScanPostsOtherOfOval)];

    public static readonly FrozenSet<string> ScanRefusedIsLeave = All[nameof(ScanRefusedIsLeave)];

    public static readonly FrozenSet<string> ScanRefusedIsSmallWord = All[nameof(ScanRefusedIsSmallWord)];

    public static readonly FrozenSet<string> ScanRefusedSaysOnly = All[nameof(ScanRefusedSaysOnly)];

    public static readonly FrozenSet<string> ScanRimLettersHolesOfOnlyPart = All[nameof(ScanRimLettersHolesOfOnlyPart)];

    public static readonly FrozenSet<string> ScanRimLettersInsideInWords = All[nameof(ScanRimLettersInsideInWords)];

    public static readonly FrozenSet<string> ScanRimLettersIsDrilledWord = All[nameof(ScanRimLettersIsDrilledWord)];

    public static readonly FrozenSet<string> ScanRimLettersLettersApart = All[nameof(ScanRimLettersLettersApart)];

    public static readonly FrozenSet<string> ScanRimLettersReadRimLetters = All[nameof(ScanRimLettersReadRimLetters)];

    public static readonly FrozenSet<string> ScanRingWordsIsArmWord = All[nameof(ScanRingWordsIsArmWord)];

    public static readonly FrozenSet<string> ScanRingWordsIsArmsBehind = All[nameof(ScanRingWordsIsArmsBehind)];

    public static readonly FrozenSet<string> ScanRingWordsIsArmsCounted = All[nameof(ScanRingWordsIsArmsCounted)];

    public static readonly FrozenSet<string> ScanRingWordsIsArmsOfSpider = All[nameof(ScanRingWordsIsArmsOfSpider)];

    public static readonly FrozenSet<string> ScanRingWordsIsOfPieces = All[nameof(ScanRingWordsIsOfPieces)];

    public static readonly FrozenSet<string> ScanRingWordsIsRingAlone = All[nameof(ScanRingWordsIsRingAlone)];

    public static readonly FrozenSet<string> ScanRingWordsIsSpider = All[nameof(ScanRingWordsIsSpider)];

    public static readonly FrozenSet<string> ScanRingWordsIsTeethWord = All[nameof(ScanRingWordsIsTeethWord)];

    public static readonly FrozenSet<string> ScanRingWordsSmaller = All[nameof(ScanRingWordsSmaller)];

    public static readonly FrozenSet<string> ScanRingsUnitsOfRings = All[nameof(ScanRingsUnitsOfRings)];

    public static readonly FrozenSet<string> ScanRotorsFourOrFiveBolts = All[nameof(ScanRotorsFourOrFiveBolts)];

    public static readonly FrozenSet<string> ScanRotorsReadCaliper = All[nameof(ScanRotorsReadCaliper)];

    public static readonly FrozenSet<string> ScanSeatTubeSidesSeatTubeBothSides = All[nameof(ScanSeatTubeSidesSeatTubeBothSides)];

    public static readonly FrozenSet<string> ScanShellSizeWidthElsewhere = All[nameof(ScanShellSizeWidthElsewhere)];

    public static readonly FrozenSet<string> ScanShockHardwareIsBoltWord = All[nameof(ScanShockHardwareIsBoltWord)];

    public static readonly FrozenSet<string> ScanShockHardwareIsEyes = All[nameof(ScanShockHardwareIsEyes)];

    public static readonly FrozenSet<string> ScanShocksLengthOfStroke = All[nameof(ScanShocksLengthOfStroke)];

    public static readonly FrozenSet<string> ScanShocksFromEyeToEye = All[nameof(ScanShocksFromEyeToEye)];

    public static readonly FrozenSet<string> ScanSignalsIsElectronicNext = All[nameof(ScanSignalsIsElectronicNext)];

    public static readonly FrozenSet<string> ScanSignalsIsPulley = All[nameof(ScanSignalsIsPulley)];

    public static readonly FrozenSet<string> ScanSignalsIsWithWord = All[nameof(ScanSignalsIsWithWord)];

    public static readonly FrozenSet<string> ScanSignalsIsBattery = All[nameof(ScanSignalsIsBattery)];

    public static readonly FrozenSet<string> ScanSignalsIsTo = All[nameof(ScanSignalsIsTo)];

    public static readonly FrozenSet<string> ScanSmallerIsBothWays = All[nameof(ScanSmallerIsBothWays)];

    public static readonly FrozenSet<string> ScanSmallerIsInsideOther = All[nameof(ScanSmallerIsInsideOther)];

    public static readonly FrozenSet<string> ScanSmallerIsOtherRatio = All[nameof(ScanSmallerIsOtherRatio)];

    public static readonly FrozenSet<string> ScanSpeedWordsIsBehindGroup = All[nameof(ScanSpeedWordsIsBehindGroup)];

    public static readonly FrozenSet<string> ScanSpeedWordsIsDoubled = All[nameof(ScanSpeedWordsIsDoubled)];

    public static readonly FrozenSet<string> ScanSpeedWordsIsSpeedWord = All[nameof(ScanSpeedWordsIsSpeedWord)];

    public static readonly FrozenSet<string> ScanSpeedsIsSpeedsAlone = All[nameof(ScanSpeedsIsSpeedsAlone)];

    public static readonly FrozenSet<string> ScanSpindlesHasAxleWord = All[nameof(ScanSpindlesHasAxleWord)];

    public static readonly FrozenSet<string> ScanSpindlesIsHollow = All[nameof(ScanSpindlesIsHollow)];

    public static readonly FrozenSet<string> ScanSpindlesIsHollow2 = All[nameof(ScanSpindlesIsHollow2)];

    public static readonly FrozenSet<string> ScanSpindlesIsThroughSpindle = All[nameof(ScanSpindlesIsThroughSpindle)];

    public static readonly FrozenSet<string> ScanSpindlesLengthOfSpindle = All[nameof(ScanSpindlesLengthOfSpindle)];

    public static readonly FrozenSet<string> ScanSpindlesLengthOfSpindle2 = All[nameof(ScanSpindlesLengthOfSpindle2)];

    public static readonly FrozenSet<string> ScanSpindlesTurnsOfPedal = All[nameof(ScanSpindlesTurnsOfPedal)];

    public static readonly FrozenSet<string> ScanSpindlesTurnsOfPedal2 = All[nameof(ScanSpindlesTurnsOfPedal2)];

    public static readonly FrozenSet<string> ScanSplinesIsFrenchPedal = All[nameof(ScanSplinesIsFrenchPedal)];

    public static readonly FrozenSet<string> ScanSplinesIsOfSpider = All[nameof(ScanSplinesIsOfSpider)];

    public static readonly FrozenSet<string> ScanSplinesSplinesApart = All[nameof(ScanSplinesSplinesApart)];

    public static readonly FrozenSet<string> ScanSplinesSplinesApart2 = All[nameof(ScanSplinesSplinesApart2)];

    public static readonly FrozenSet<string> ScanSprocketsIsAble = All[nameof(ScanSprocketsIsAble)];

    public static readonly FrozenSet<string> ScanSprocketsIsBehindCount = All[nameof(ScanSprocketsIsBehindCount)];

    public static readonly FrozenSet<string> ScanSprocketsIsBehindCount2 = All[nameof(ScanSprocketsIsBehindCount2)];

    public static readonly FrozenSet<string> ScanSprocketsIsBehindCount3 = All[nameof(ScanSprocketsIsBehindCount3)];

    public static readonly FrozenSet<string> ScanSprocketsIsBehindName = All[nameof(ScanSprocketsIsBehindName)];

    public static readonly FrozenSet<string> ScanSprocketsIsForSprockets = All[nameof(ScanSprocketsIsForSprockets)];

    public static readonly FrozenSet<string> ScanSprocketsIsSingleUse = All[nameof(ScanSprocketsIsSingleUse)];

    public static readonly FrozenSet<string> ScanSprocketsIsSprocket = All[nameof(ScanSprocketsIsSprocket)];

    public static readonly FrozenSet<string> ScanSprocketsIsSprockets = All[nameof(ScanSprocketsIsSprockets)];

    public static readonly FrozenSet<string> ScanSprocketsSprocketThatGoes = All[nameof(ScanSprocketsSprocketThatGoes)];

    public static readonly FrozenSet<string> ScanSteeringIsCutThatMayCome = All[nameof(ScanSteeringIsCutThatMayCome)];

    public static readonly FrozenSet<string> ScanSteeringIsOffsetOfSteerer = All[nameof(ScanSteeringIsOffsetOfSteerer)];

    public static readonly FrozenSet<string> ScanSteeringIsOfTurnedCrown = All[nameof(ScanSteeringIsOfTurnedCrown)];

    public static readonly FrozenSet<string> ScanSteeringReadSteerer = All[nameof(ScanSteeringReadSteerer)];

    public static readonly FrozenSet<string> ScanSteeringThreadedSteerer = All[nameof(ScanSteeringThreadedSteerer)];

    public static readonly FrozenSet<string> ScanTapersIsOfCrown = All[nameof(ScanTapersIsOfCrown)];

    public static readonly FrozenSet<string> ScanTeethIsSeatedDirect = All[nameof(ScanTeethIsSeatedDirect)];

    public static readonly FrozenSet<string> ScanTopicsIsHead = All[nameof(ScanTopicsIsHead)];

    public static readonly FrozenSet<string> ScanTubeWordsIsSmallWord = All[nameof(ScanTubeWordsIsSmallWord)];

    public static readonly FrozenSet<string> ScanTubeWordsIsStrange = All[nameof(ScanTubeWordsIsStrange)];

    public static readonly FrozenSet<string> ScanTubeWordsLengthBehindValve = All[nameof(ScanTubeWordsLengthBehindValve)];

    public static readonly FrozenSet<string> ScanTubesIsStemOfValve = All[nameof(ScanTubesIsStemOfValve)];
    public static readonly FrozenSet<string> ScanTubesStemByPlace = All[nameof(ScanTubesStemByPlace)];

    public static readonly FrozenSet<string> ScanTyreWordsIsOfFoldingBike = All[nameof(ScanTyreWordsIsOfFoldingBike)];

    public static readonly FrozenSet<string> ScanTyreWordsIsOfFoldingBike2 = All[nameof(ScanTyreWordsIsOfFoldingBike2)];

    public static readonly FrozenSet<string> ScanTyreWordsIsOfFoldingBike3 = All[nameof(ScanTyreWordsIsOfFoldingBike3)];

    public static readonly FrozenSet<string> ScanTyreWordsIsOfRimAlone = All[nameof(ScanTyreWordsIsOfRimAlone)];

    public static readonly FrozenSet<string> ScanTyreWordsIsWidthOfTyre = All[nameof(ScanTyreWordsIsWidthOfTyre)];

    public static readonly FrozenSet<string> ScanTyreWordsLeadsToSeat = All[nameof(ScanTyreWordsLeadsToSeat)];

    public static readonly FrozenSet<string> ScanTyresIsOfPatch = All[nameof(ScanTyresIsOfPatch)];

    public static readonly FrozenSet<string> ScanUseReadUse = All[nameof(ScanUseReadUse)];

    public static readonly FrozenSet<string> ScanWheelsBrakeTrackApart = All[nameof(ScanWheelsBrakeTrackApart)];

    public static readonly FrozenSet<string> ScanWheelsIsFixedWord = All[nameof(ScanWheelsIsFixedWord)];

    public static readonly FrozenSet<string> ScanWheelsReadInside = All[nameof(ScanWheelsReadInside)];

    public static readonly FrozenSet<string> ScanWheelsRimHeight = All[nameof(ScanWheelsRimHeight)];

    public static readonly FrozenSet<string> ScanWheelsRimHeight2 = All[nameof(ScanWheelsRimHeight2)];

    public static readonly FrozenSet<string> ScanWidthsIsOfFlange = All[nameof(ScanWidthsIsOfFlange)];

    public static readonly FrozenSet<string> SetAsideCannot = All[nameof(SetAsideCannot)];

    public static readonly FrozenSet<string> SetAsideGreater = All[nameof(SetAsideGreater)];

    public static readonly FrozenSet<string> SetAsideIsDuty = All[nameof(SetAsideIsDuty)];

    public static readonly FrozenSet<string> SetAsideIsFitting = All[nameof(SetAsideIsFitting)];

    public static readonly FrozenSet<string> SetAsideIsFor = All[nameof(SetAsideIsFor)];

    public static readonly FrozenSet<string> SetAsideIsOnlyUntried = All[nameof(SetAsideIsOnlyUntried)];

    public static readonly FrozenSet<string> SetAsideIsTurn = All[nameof(SetAsideIsTurn)];

    public static readonly FrozenSet<string> SetAsideIsWith = All[nameof(SetAsideIsWith)];

    public static readonly FrozenSet<string> SetAsideMatesIsAdapterNotThere = All[nameof(SetAsideMatesIsAdapterNotThere)];

    public static readonly FrozenSet<string> SetAsideMatesIsAtStem = All[nameof(SetAsideMatesIsAtStem)];

    public static readonly FrozenSet<string> SetAsideMatesIsAtStem2 = All[nameof(SetAsideMatesIsAtStem2)];

    public static readonly FrozenSet<string> SetAsideCoverOf = All[nameof(SetAsideCoverOf)];

    public static readonly FrozenSet<string> SetAsideMatesIsDrilled = All[nameof(SetAsideMatesIsDrilled)];

    public static readonly FrozenSet<string> SetAsideMatesIsNoExtra = All[nameof(SetAsideMatesIsNoExtra)];

    public static readonly FrozenSet<string> SetAsideMatesIsReamedTo = All[nameof(SetAsideMatesIsReamedTo)];

    public static readonly FrozenSet<string> SetAsideMatesIsReamedTo2 = All[nameof(SetAsideMatesIsReamedTo2)];

    public static readonly FrozenSet<string> SetAsideMatesIsTaking = All[nameof(SetAsideMatesIsTaking)];

    public static readonly FrozenSet<string> SetAsideNamesThing = All[nameof(SetAsideNamesThing)];

    public static readonly FrozenSet<string> SetAsideNotMoreThan = All[nameof(SetAsideNotMoreThan)];

    public static readonly FrozenSet<string> SetAsideNotesIsTo = All[nameof(SetAsideNotesIsTo)];

    public static readonly FrozenSet<string> SetAsideReducers = All[nameof(SetAsideReducers)];

    public static readonly FrozenSet<string> SetAsideSenseIsOfAnyCassette = All[nameof(SetAsideSenseIsOfAnyCassette)];

    public static readonly FrozenSet<string> SheetTextTag = All[nameof(SheetTextTag)];

    public static readonly FrozenSet<string> SlotFinderHandOf = All[nameof(SlotFinderHandOf)];

    public static readonly FrozenSet<string> SlotFinderHandOf2 = All[nameof(SlotFinderHandOf2)];

    public static readonly FrozenSet<string> SpecLexerDivided = All[nameof(SpecLexerDivided)];

    public static readonly FrozenSet<string> SpecPartsIsBarOfStem = All[nameof(SpecPartsIsBarOfStem)];

    public static readonly FrozenSet<string> SpecPartsIsLead = All[nameof(SpecPartsIsLead)];

    public static readonly FrozenSet<string> SpecPartsJoinedPart = All[nameof(SpecPartsJoinedPart)];

    public static readonly FrozenSet<string> SpelledFractionsIsOfAxle = All[nameof(SpelledFractionsIsOfAxle)];

    public static readonly FrozenSet<string> SpelledFractionsIsOfTaper = All[nameof(SpelledFractionsIsOfTaper)];

    public static readonly FrozenSet<string> SpelledFractionsIsOfTaper2 = All[nameof(SpelledFractionsIsOfTaper2)];

    public static readonly FrozenSet<string> SpelledFractionsPutChain = All[nameof(SpelledFractionsPutChain)];

    public static readonly FrozenSet<string> SpelledNumbersIsCounted = All[nameof(SpelledNumbersIsCounted)];

    public static readonly FrozenSet<string> SpelledNumbersIsListed = All[nameof(SpelledNumbersIsListed)];

    public static readonly FrozenSet<string> SpelledNumbersIsMeasured = All[nameof(SpelledNumbersIsMeasured)];

    public static readonly FrozenSet<string> SpelledNumbersIsMeasured2 = All[nameof(SpelledNumbersIsMeasured2)];

    public static readonly FrozenSet<string> SpelledNumbersIsOfBody = All[nameof(SpelledNumbersIsOfBody)];

    public static readonly FrozenSet<string> SpelledNumbersIsOfDrive = All[nameof(SpelledNumbersIsOfDrive)];

    public static readonly FrozenSet<string> SpelledNumbersIsOfDrive2 = All[nameof(SpelledNumbersIsOfDrive2)];

    public static readonly FrozenSet<string> SpelledNumbersIsStartOfRange = All[nameof(SpelledNumbersIsStartOfRange)];

    public static readonly FrozenSet<string> SpelledNumbersIsTimes = All[nameof(SpelledNumbersIsTimes)];

    public static readonly FrozenSet<string> SpelledTensIsOfSize = All[nameof(SpelledTensIsOfSize)];

    public static readonly FrozenSet<string> SpelledTensIsOfTube = All[nameof(SpelledTensIsOfTube)];

    public static readonly FrozenSet<string> SpelledTensRead = All[nameof(SpelledTensRead)];

    public static readonly FrozenSet<string> SpelledTenthsHundredths = All[nameof(SpelledTenthsHundredths)];

    public static readonly FrozenSet<string> SpelledTenthsIsOfPitch = All[nameof(SpelledTenthsIsOfPitch)];

    public static readonly FrozenSet<string> SpelledTenthsIsOtherCount = All[nameof(SpelledTenthsIsOtherCount)];

    public static readonly FrozenSet<string> SpokenNamesIsBehindAxle = All[nameof(SpokenNamesIsBehindAxle)];

    public static readonly FrozenSet<string> SpokenSizesIsBesideCup = All[nameof(SpokenSizesIsBesideCup)];

    public static readonly FrozenSet<string> SpokenSizesIsBesideCup2 = All[nameof(SpokenSizesIsBesideCup2)];

    public static readonly FrozenSet<string> SpokenSizesIsNounOfSize = All[nameof(SpokenSizesIsNounOfSize)];

    public static readonly FrozenSet<string> TalkWordsIsOfKnowing = All[nameof(TalkWordsIsOfKnowing)];

    public static readonly FrozenSet<string> TimesByPlaceJoins = All[nameof(TimesByPlaceJoins)];

    public static readonly FrozenSet<string> TimesByPlaceJoins2 = All[nameof(TimesByPlaceJoins2)];

    public static readonly FrozenSet<string> TradeTalkDoubtsIsButForWear = All[nameof(TradeTalkDoubtsIsButForWear)];

    public static readonly FrozenSet<string> TradeTalkDoubtsIsComparison = All[nameof(TradeTalkDoubtsIsComparison)];

    public static readonly FrozenSet<string> TradeTalkDoubtsIsComparison2 = All[nameof(TradeTalkDoubtsIsComparison2)];

    public static readonly FrozenSet<string> TradeTalkDoubtsIsWeak = All[nameof(TradeTalkDoubtsIsWeak)];

    public static readonly FrozenSet<string> TradeTalkDoubtsSentenceSays = All[nameof(TradeTalkDoubtsSentenceSays)];

    public static readonly FrozenSet<string> TradeTalkWearIsAfterWear = All[nameof(TradeTalkWearIsAfterWear)];

    public static readonly FrozenSet<string> TradeTalkWearIsAmount = All[nameof(TradeTalkWearIsAmount)];

    public static readonly FrozenSet<string> TradeTalkWearIsAmount2 = All[nameof(TradeTalkWearIsAmount2)];

    public static readonly FrozenSet<string> TradeTalkWearIsAtCostOf = All[nameof(TradeTalkWearIsAtCostOf)];

    public static readonly FrozenSet<string> TradeTalkWearIsBoxOrVerb = All[nameof(TradeTalkWearIsBoxOrVerb)];

    public static readonly FrozenSet<string> TradeTalkWearIsBoxOrVerb2 = All[nameof(TradeTalkWearIsBoxOrVerb2)];

    public static readonly FrozenSet<string> TradeTalkWearIsBoxOrVerb3 = All[nameof(TradeTalkWearIsBoxOrVerb3)];

    public static readonly FrozenSet<string> TradeTalkWearIsBoxOrVerb4 = All[nameof(TradeTalkWearIsBoxOrVerb4)];

    public static readonly FrozenSet<string> TradeTalkWearIsBoxOrVerb5 = All[nameof(TradeTalkWearIsBoxOrVerb5)];

    public static readonly FrozenSet<string> TradeTalkWearIsGivenAway = All[nameof(TradeTalkWearIsGivenAway)];

    public static readonly FrozenSet<string> TradeTalkWearIsNotWorn = All[nameof(TradeTalkWearIsNotWorn)];

    public static readonly FrozenSet<string> TradeTalkWearIsOwner = All[nameof(TradeTalkWearIsOwner)];

    public static readonly FrozenSet<string> TradeTalkWearIsPlace = All[nameof(TradeTalkWearIsPlace)];

    public static readonly FrozenSet<string> ScanFiguresIsOfHeavier = All[nameof(ScanFiguresIsOfHeavier)];

    public static readonly FrozenSet<string> PlacedWordsLeastOil = All[nameof(PlacedWordsLeastOil)];

    public static readonly FrozenSet<string> ScanSmallerLengthOfCable = All[nameof(ScanSmallerLengthOfCable)];

    public static readonly FrozenSet<string> ScanSmallerOfFrame = All[nameof(ScanSmallerOfFrame)];

    public static readonly FrozenSet<string> ScanFrameNotNeeded = All[nameof(ScanFrameNotNeeded)];

    public static readonly FrozenSet<string> ScanCupsOneOf = All[nameof(ScanCupsOneOf)];

    public static readonly FrozenSet<string> ScanTeethSpider = All[nameof(ScanTeethSpider)];

    public static readonly FrozenSet<string> ScanTapersLeft = All[nameof(ScanTapersLeft)];

    public static readonly FrozenSet<string> ScanKindBeside = All[nameof(ScanKindBeside)];

    public static readonly FrozenSet<string> ScanKindOfOther = All[nameof(ScanKindOfOther)];

    public static readonly FrozenSet<string> ScanKindExcluded = All[nameof(ScanKindExcluded)];

    public static readonly FrozenSet<string> ScanTeethArm = All[nameof(ScanTeethArm)];

    public static readonly FrozenSet<string> ScanWheelsInRim = All[nameof(ScanWheelsInRim)];

    public static readonly FrozenSet<string> ScanDoubtsWished = All[nameof(ScanDoubtsWished)];

    public static readonly FrozenSet<string> PlacedWordsCourse = All[nameof(PlacedWordsCourse)];

    public static readonly FrozenSet<string> ScanGuidesOld = All[nameof(ScanGuidesOld)];

    public static readonly FrozenSet<string> ScanRingWordsVerb = All[nameof(ScanRingWordsVerb)];

    public static readonly FrozenSet<string> ScanShockScrew = All[nameof(ScanShockScrew)];

    public static readonly FrozenSet<string> ScanSmallerIsHousing = All[nameof(ScanSmallerIsHousing)];

    public static readonly FrozenSet<string> ScanSteeringSeatWord = All[nameof(ScanSteeringSeatWord)];

    public static readonly FrozenSet<string> ScanStemsClampedRound = All[nameof(ScanStemsClampedRound)];

    public static readonly FrozenSet<string> ScanRimLiner = All[nameof(ScanRimLiner)];
}
